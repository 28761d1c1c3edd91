-- An invented workshop of :people learners with :panels panels for each of the four skills. Whole
-- numbers decide who stands where: every third panel is not accepted, every fifth is returned, every
-- second learner is signed off, and every seventh has missed all panels of clear in the same way.
insert into workshop (id, name, zone, units, created_at) values (uuid '00000000-0000-0000-0000-000000000001', 'Shop', 'UTC', 'METRIC', timestamp with time zone '2030-01-01 00:00:00Z');
insert into workshop (id, name, zone, units, created_at) values (uuid '00000000-0000-0000-0000-000000000002', 'Other shop', 'UTC', 'METRIC', timestamp with time zone '2030-01-01 00:00:00Z');

create local temporary table skill (n int, id varchar(20));
insert into skill values (1, 'preparing'), (2, 'masking'), (3, 'coverage'), (4, 'clear');

insert into person (id, workshop_id, name, sign_in_name, password_hash, units, active, created_at)
  select cast('00000000-0000-0002-0000-00000000000' || (x - 1) as uuid),
  uuid '00000000-0000-0000-0000-000000000001', 'Staff ' || x, 'staff' || x, null, 'METRIC', true, timestamp with time zone '2030-01-01 00:00:00Z'
  from system_range(1, 5);
insert into person (id, workshop_id, name, sign_in_name, password_hash, units, active, created_at)
  select cast('00000000-0000-0001-0000-' || lpad(lower(trim(to_char(x, 'XXXXXXXX'))), 12, '0') as uuid),
  uuid '00000000-0000-0000-0000-000000000001', 'Learner ' || lpad(x, 6, '0'), 'learner' || x, null, 'METRIC', true, timestamp with time zone '2030-01-01 00:00:00Z'
  from system_range(1, :people);
insert into person_role select id, 'APPRENTICE' from person where sign_in_name like 'learner%';

create local temporary table learner as
  select id, cast(substring(sign_in_name from 8) as int) as n from person where sign_in_name like 'learner%';

insert into attempt (id, workshop_id, person_id, task_id, task_version, unit_id, skill_id, sheet_code, state,
  open_key, gun_card_id, changed_what, revision, started_at, scored_at, practice_score, accepted, submit_key, units)
  select random_uuid(), uuid '00000000-0000-0000-0000-000000000001', l.id, s.id || '/task', 'v1', s.id, s.id,
  substring(l.n || 'x' || s.n || 'x' || p.x from 1 for 12),
  case when mod(p.x + l.n, 5) = 0 then 'RETURNED' when mod(p.x + l.n, 5) < 3 then 'ACCEPTED' else 'SCORED' end,
  null, null, '', 1,
  dateadd(hour, -20 * (:panels - p.x) - mod(l.n, 17) - 2, timestamp with time zone '2031-03-04 14:00:00Z'),
  dateadd(hour, -20 * (:panels - p.x) - mod(l.n, 17), timestamp with time zone '2031-03-04 14:00:00Z'),
  90, case when s.n = 4 and mod(l.n, 7) = 0 then false else mod(p.x, 3) > 0 end, null, 'METRIC'
  from learner l cross join skill s cross join system_range(1, :panels) p;
insert into attempt_finding (attempt_id, finding_id, support, standing, workshop_id, person_id, unit_id, task_id, scored_at)
  select id, 'film.low', 1, 1, workshop_id, person_id, unit_id, task_id, scored_at from attempt where accepted = false;
insert into grading (id, attempt_id, workshop_id, grader_id, graded_at, decision, remark)
  select random_uuid(), id, workshop_id, uuid '00000000-0000-0002-0000-000000000003',
  dateadd(hour, 1, scored_at), state, 'Once more.' from attempt where state <> 'SCORED';

insert into stuck_learner (person_id, task_id, workshop_id, unit_id, finding_id, panels, last_at)
  select person_id, task_id, workshop_id, unit_id, 'film.low', count(*), max(scored_at) from attempt
  where skill_id = 'clear' group by person_id, task_id, workshop_id, unit_id having max(cast(accepted as int)) = 0;
insert into returned_panel (attempt_id, workshop_id, person_id, unit_id, task_id, started_at, returned_at, remark)
  select a.id, a.workshop_id, a.person_id, a.unit_id, a.task_id, a.started_at, g.graded_at, g.remark from attempt a
  join grading g on g.attempt_id = a.id join learner l on l.id = a.person_id
  where a.state = 'RETURNED' and a.sheet_code like '%x' || :panels;

insert into skill_standing (person_id, skill_id, workshop_id, lesson_done, exam_passed, panels_counting,
  panels_needed, graded_counting, graded_needed, on_the_way, panels_waiting, waiting_since, holds_until,
  ready_since, changed_at)
  select l.id, s.id, uuid '00000000-0000-0000-0000-000000000001', true, mod(l.n, 3) = 0,
  mod(l.n, 5), 5, mod(l.n, 2), 2, mod(l.n, 11) > 0 and mod(l.n + s.n, 2) = 1,
  (select count(*) from attempt a where a.person_id = l.id and a.skill_id = s.id and a.state = 'SCORED' and a.accepted),
  (select min(a.scored_at) from attempt a where a.person_id = l.id and a.skill_id = s.id and a.state = 'SCORED' and a.accepted),
  timestamp with time zone '2031-09-01 00:00:00Z',
  case when mod(l.n, 11) = 0 then timestamp with time zone '2031-03-01 00:00:00Z' end,
  timestamp with time zone '2031-03-01 00:00:00Z' from learner l cross join skill s;
insert into sign_off (id, workshop_id, person_id, skill_id, rule_version, code, state, granted_by, granted_at, expires_at)
  select random_uuid(), uuid '00000000-0000-0000-0000-000000000001', l.id, s.id, '1', 'code' || l.n || 'x' || s.n,
  'GRANTED', uuid '00000000-0000-0002-0000-000000000002', timestamp with time zone '2030-03-01 00:00:00Z',
  dateadd(day, mod(l.n * 7, 400) - 30, timestamp with time zone '2031-03-04 14:00:00Z')
  from learner l cross join skill s where mod(l.n + s.n, 2) = 0;
insert into sign_off_step (id, workshop_id, person_id, skill_id, sign_off_id, kind, taken_by, taken_at, reason, evidence)
  select random_uuid(), s.workshop_id, s.person_id, s.skill_id, s.id, 'NOT_YET', s.granted_by, s.granted_at, 'Not yet.', '{}'
  from sign_off s;

-- Learner 1 leaves more of everything the more panels they have done: photographs, readings and looks of an
-- instructor at each panel of clear, papers of all units, checks of all lessons, and decisions.
create local temporary table nth as select x from system_range(1, 1 + :panels / 10);
create local temporary table own as select a.* from attempt a join learner l on l.id = a.person_id
  where l.n = 1 and a.skill_id = 'clear';
insert into photograph (id, attempt_id, hash, caption, width, height, added_at)
  select random_uuid(), a.id, 'picture' || x, '', 40, 30, a.scored_at from own a cross join nth;
insert into attempt_reading (attempt_id, cell, typed, typed_at, revision)
  select a.id, 'film-after.at' || x, '55', a.started_at, 1 from own a cross join nth;
insert into grading (id, attempt_id, workshop_id, grader_id, graded_at, decision, remark)
  select random_uuid(), a.id, a.workshop_id, uuid '00000000-0000-0002-0000-000000000003',
  dateadd(minute, x, a.scored_at), 'ACCEPTED', '' from own a cross join nth;
insert into rubric_mark (grading_id, item_id, mark)
  select g.id, 'evenness', 3 from grading g join own a on a.id = g.attempt_id;
insert into defect_mark (grading_id, number, kind, x, y, note)
  select g.id, 0, 'run', 0.1, 0.1, '' from grading g join own a on a.id = g.attempt_id;
insert into paper (id, workshop_id, person_id, unit_id, drawn_at, handed_in_at, score, passed, questions)
  select random_uuid(), uuid '00000000-0000-0000-0000-000000000001', l.id, s.id,
  dateadd(day, x, timestamp with time zone '2030-02-01 00:00:00Z'),
  dateadd(day, x, timestamp with time zone '2030-02-01 01:00:00Z'), 0.9, true, '{}'
  from learner l cross join skill s cross join nth where l.n = 1;
insert into lesson_reading (person_id, unit_id, version, read_at)
  select l.id, s.id, 'v1', timestamp with time zone '2030-01-01 00:00:00Z' from learner l cross join skill s
  where l.n = 1 and (s.n = 4 or :panels > 10);
insert into check_answer (person_id, unit_id, check_id, chosen, was_right, answered_at)
  select l.id, s.id, 'check' || x, '1', true, timestamp with time zone '2030-01-01 00:00:00Z'
  from learner l cross join skill s cross join nth where l.n = 1;
insert into sign_off_step (id, workshop_id, person_id, skill_id, sign_off_id, kind, taken_by, taken_at, reason, evidence)
  select random_uuid(), uuid '00000000-0000-0000-0000-000000000001', l.id, s.id, null, 'NOT_YET',
  uuid '00000000-0000-0002-0000-000000000002', dateadd(day, x, timestamp with time zone '2030-01-01 00:00:00Z'),
  'Not yet.', '{}' from learner l cross join skill s cross join nth where l.n = 1;
