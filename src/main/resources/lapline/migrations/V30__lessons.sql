-- A lesson read to its end, with the version that was read.
create table lesson_reading (
  person_id uuid not null references person (id),
  unit_id varchar(80) not null,
  version varchar(64) not null,
  read_at timestamp(6) with time zone not null,
  primary key (person_id, unit_id)
);

-- The latest answer to each check inside a lesson; once right, it stays right.
create table check_answer (
  person_id uuid not null references person (id),
  unit_id varchar(80) not null,
  check_id varchar(80) not null,
  chosen varchar(60) not null,
  was_right boolean not null,
  answered_at timestamp(6) with time zone not null,
  primary key (person_id, unit_id, check_id)
);
