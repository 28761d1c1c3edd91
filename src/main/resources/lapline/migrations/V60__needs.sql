-- Who needs an instructor, kept up whenever a panel is scored or graded, so that the list is read from
-- as many rows as it has. First: whose last panels of a task were all missed in the same way.
create table stuck_learner (
  person_id uuid not null references person (id),
  task_id varchar(120) not null,
  workshop_id uuid not null references workshop (id),
  unit_id varchar(80) not null,
  finding_id varchar(120) not null,
  panels integer not null,
  last_at timestamp(6) with time zone not null,
  primary key (person_id, task_id)
);
create index stuck_learner_by_workshop on stuck_learner (workshop_id, last_at, person_id, task_id);

-- And the last scored panel of a task, where it was sent back.
create table returned_panel (
  attempt_id uuid primary key references attempt (id),
  workshop_id uuid not null references workshop (id),
  person_id uuid not null references person (id),
  unit_id varchar(80) not null,
  task_id varchar(120) not null,
  started_at timestamp(6) with time zone not null,
  returned_at timestamp(6) with time zone not null,
  remark varchar(2000) not null
);
create index returned_panel_by_workshop on returned_panel (workshop_id, returned_at, attempt_id);
create index returned_panel_by_person on returned_panel (person_id, unit_id);

-- What was done before counts as well.
insert into stuck_learner (person_id, task_id, workshop_id, unit_id, finding_id, panels, last_at)
  select x.person_id, x.task_id, x.workshop_id, x.unit_id, min(x.finding_id), 3, max(x.scored_at)
  from (select a.person_id, a.task_id, a.workshop_id, a.unit_id, a.accepted, a.scored_at, f.finding_id,
      row_number() over (partition by a.person_id, a.task_id order by a.scored_at desc, a.id) as n
    from attempt a left join attempt_finding f on f.attempt_id = a.id and f.standing = 1
    where a.scored_at is not null) x
  where x.n <= 3
  group by x.person_id, x.task_id, x.workshop_id, x.unit_id
  having count(*) = 3 and count(x.finding_id) = 3 and min(x.finding_id) = max(x.finding_id)
    and max(case when x.accepted then 1 else 0 end) = 0;
insert into returned_panel (attempt_id, workshop_id, person_id, unit_id, task_id, started_at, returned_at, remark)
  select a.id, a.workshop_id, a.person_id, a.unit_id, a.task_id, a.started_at, g.graded_at, g.remark
  from attempt a join grading g on g.attempt_id = a.id
  where a.state = 'RETURNED'
    and not exists (select 1 from grading h where h.attempt_id = a.id and h.graded_at > g.graded_at)
    and not exists (select 1 from attempt b where b.person_id = a.person_id and b.task_id = a.task_id
      and b.scored_at > a.scored_at);
