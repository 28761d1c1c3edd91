-- Where each learner stands towards each skill: kept up whenever something they did may change it,
-- so that boards and waiting lists read rows instead of gathering evidence anew.
create table skill_standing (
  person_id uuid not null references person (id),
  skill_id varchar(80) not null,
  workshop_id uuid not null references workshop (id),
  lesson_done boolean not null,
  exam_passed boolean not null,
  panels_counting integer not null,
  panels_needed integer not null,
  graded_counting integer not null,
  graded_needed integer not null,
  -- since when the evidence has been complete and no decision has been taken
  ready_since timestamp(6) with time zone,
  changed_at timestamp(6) with time zone not null,
  primary key (person_id, skill_id)
);
create index skill_standing_ready on skill_standing (workshop_id, ready_since);

-- The dated, expiring decision that a person may do an operation unsupervised.
create table sign_off (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  person_id uuid not null references person (id),
  skill_id varchar(80) not null,
  rule_version varchar(40) not null,
  code varchar(40) not null,
  state varchar(12) not null,
  granted_by uuid not null references person (id),
  granted_at timestamp(6) with time zone not null,
  expires_at timestamp(6) with time zone not null,
  constraint sign_off_code unique (code)
);
create index sign_off_by_person on sign_off (person_id, skill_id, granted_at desc);
create index sign_off_by_expiry on sign_off (workshop_id, state, expires_at);

-- Every step that was ever taken about a person and a skill; nothing is changed or taken away.
create table sign_off_step (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  person_id uuid not null references person (id),
  skill_id varchar(80) not null,
  sign_off_id uuid references sign_off (id),
  kind varchar(12) not null,
  taken_by uuid not null references person (id),
  taken_at timestamp(6) with time zone not null,
  reason varchar(2000) not null,
  -- the evidence and the rule as they were then, as JSON
  evidence text not null
);
create index sign_off_step_by_person on sign_off_step (person_id, skill_id, taken_at);
