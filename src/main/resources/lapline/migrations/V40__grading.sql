-- What an instructor saw on a panel that no gauge does. A later grading of the same panel by the
-- same person replaces nothing: each stands with its time, the latest of a person counts.
create table grading (
  id uuid primary key,
  attempt_id uuid not null references attempt (id),
  workshop_id uuid not null references workshop (id),
  grader_id uuid not null references person (id),
  graded_at timestamp(6) with time zone not null,
  decision varchar(10) not null,
  remark varchar(2000) not null
);
create index grading_by_attempt on grading (attempt_id, graded_at desc);
create index grading_by_grader on grading (grader_id, graded_at desc);

create table rubric_mark (
  grading_id uuid not null references grading (id),
  item_id varchar(80) not null,
  mark integer not null,
  primary key (grading_id, item_id)
);

-- A defect placed on the panel drawing, in metres from the panel's lower left corner.
create table defect_mark (
  grading_id uuid not null references grading (id),
  number integer not null,
  kind varchar(80) not null,
  x double precision not null,
  y double precision not null,
  note varchar(200) not null,
  primary key (grading_id, number)
);
