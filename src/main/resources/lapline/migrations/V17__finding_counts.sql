-- Findings are counted across people and months, so each row holds what it is counted by: whose panel,
-- of which unit and task, and when it was scored.
alter table attempt_finding add column workshop_id uuid;
alter table attempt_finding add column person_id uuid;
alter table attempt_finding add column unit_id varchar(80);
alter table attempt_finding add column task_id varchar(120);
alter table attempt_finding add column scored_at timestamp(6) with time zone;
update attempt_finding set
  workshop_id = (select a.workshop_id from attempt a where a.id = attempt_id),
  person_id = (select a.person_id from attempt a where a.id = attempt_id),
  unit_id = (select a.unit_id from attempt a where a.id = attempt_id),
  task_id = (select a.task_id from attempt a where a.id = attempt_id),
  scored_at = (select a.scored_at from attempt a where a.id = attempt_id);
alter table attempt_finding alter column workshop_id set not null;
alter table attempt_finding alter column person_id set not null;
alter table attempt_finding alter column unit_id set not null;
alter table attempt_finding alter column task_id set not null;
alter table attempt_finding alter column scored_at set not null;
-- all that is counted stands in the index, so that no row is opened for it
create index attempt_finding_counted on attempt_finding
  (workshop_id, standing, scored_at, unit_id, finding_id, person_id, task_id);
create index attempt_finding_listed on attempt_finding (workshop_id, unit_id, finding_id, standing, scored_at);
