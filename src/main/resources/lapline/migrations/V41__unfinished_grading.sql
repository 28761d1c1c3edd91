-- What an instructor has put down about a panel without having decided yet: one row for each
-- instructor and panel, taken away by the decision. 'seen' holds marks and placed defects as JSON.
create table unfinished_grading (
  id uuid primary key,
  attempt_id uuid not null references attempt (id),
  grader_id uuid not null references person (id),
  kept_at timestamp(6) with time zone not null,
  remark varchar(2000) not null,
  seen text not null,
  unique (attempt_id, grader_id)
);
