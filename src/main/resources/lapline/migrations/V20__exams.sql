-- An exam as it was drawn for one person; its questions as JSON, so that it can be read for ever.
create table paper (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  person_id uuid not null references person (id),
  unit_id varchar(80) not null,
  -- person and unit while it is being sat, nothing after: two taps on 'begin' cannot open two papers
  open_key varchar(120),
  drawn_at timestamp(6) with time zone not null,
  handed_in_at timestamp(6) with time zone,
  score double precision,
  passed boolean,
  questions text not null,
  result text,
  constraint paper_open_key unique (open_key)
);
create index paper_by_person on paper (person_id, unit_id, drawn_at desc);
create index paper_by_workshop on paper (workshop_id, handed_in_at desc);

-- What is written at one place of a paper, as typed, so that two windows merge place by place.
create table paper_answer (
  paper_id uuid not null references paper (id),
  cell varchar(20) not null,
  typed varchar(200) not null,
  typed_at timestamp(6) with time zone not null,
  primary key (paper_id, cell)
);

-- How each item was answered, for the study of items across papers without opening them.
create table paper_mark (
  paper_id uuid not null references paper (id),
  item_id varchar(80) not null,
  unit_id varchar(80) not null,
  item_version varchar(64) not null,
  kind varchar(20) not null,
  mark double precision not null,
  state varchar(20) not null,
  -- in the bank's own keys, however the choices were shuffled
  given varchar(200) not null,
  primary key (paper_id, item_id)
);
create index paper_mark_by_item on paper_mark (unit_id, item_id, item_version);
