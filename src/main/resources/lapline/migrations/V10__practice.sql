-- What a gun's maker says about it: ranges as they were typed, so that a card reads as its sheet does.
create table gun_card (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  name varchar(120) not null,
  distance varchar(60) not null,
  pressure varchar(60) not null,
  overlap varchar(60) not null,
  speed varchar(60) not null,
  fan varchar(60) not null,
  made_by uuid not null references person (id),
  made_at timestamp(6) with time zone not null,
  retired_at timestamp(6) with time zone
);
create index gun_card_by_workshop on gun_card (workshop_id, name);

-- A workshop's own target from its data sheet; a newer one retires the older, none is taken away.
create table target_override (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  task_id varchar(120) not null,
  criterion_id varchar(80) not null,
  target varchar(60) not null,
  sheet varchar(200) not null,
  reason varchar(500) not null,
  made_by uuid not null references person (id),
  made_at timestamp(6) with time zone not null,
  retired_by uuid references person (id),
  retired_at timestamp(6) with time zone
);
create index target_override_by_task on target_override (workshop_id, task_id, criterion_id, made_at);

-- One panel done by one apprentice.
create table attempt (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  person_id uuid not null references person (id),
  task_id varchar(120) not null,
  task_version varchar(64) not null,
  unit_id varchar(80) not null,
  skill_id varchar(80) not null,
  sheet_code varchar(12) not null,
  state varchar(10) not null,
  -- person and task while it is a draft, nothing after: two taps on 'start' cannot open two drafts
  open_key varchar(200),
  gun_card_id uuid references gun_card (id),
  changed_what varchar(500) not null,
  revision bigint not null,
  started_at timestamp(6) with time zone not null,
  scored_at timestamp(6) with time zone,
  practice_score double precision,
  accepted boolean,
  submit_key varchar(80),
  constraint attempt_sheet_code unique (sheet_code),
  constraint attempt_open_key unique (open_key),
  constraint attempt_submit_key unique (person_id, submit_key)
);
create index attempt_by_person_task on attempt (person_id, task_id, started_at desc);
create index attempt_by_workshop_scored on attempt (workshop_id, scored_at desc);
create index attempt_by_workshop_state on attempt (workshop_id, state, scored_at);
create index attempt_by_person_skill on attempt (person_id, skill_id, state);

-- One row for each place on the record, so that two windows merge reading by reading.
create table attempt_reading (
  attempt_id uuid not null references attempt (id),
  cell varchar(80) not null,
  typed varchar(200) not null,
  typed_at timestamp(6) with time zone not null,
  revision bigint not null,
  primary key (attempt_id, cell)
);

-- The task exactly as the panel was judged under it, and what came out; as JSON, for ever readable.
create table attempt_judgement (
  attempt_id uuid primary key references attempt (id),
  task text not null,
  score text not null
);

-- For counting across people, without opening the judgement.
create table attempt_verdict (
  attempt_id uuid not null references attempt (id),
  criterion_id varchar(80) not null,
  judged boolean not null,
  verdict varchar(10),
  conformance double precision,
  primary key (attempt_id, criterion_id)
);
create table attempt_finding (
  attempt_id uuid not null references attempt (id),
  finding_id varchar(120) not null,
  support double precision not null,
  -- 1 for the finding shown first
  standing integer not null,
  primary key (attempt_id, finding_id)
);
create index attempt_finding_by_finding on attempt_finding (finding_id, standing);
