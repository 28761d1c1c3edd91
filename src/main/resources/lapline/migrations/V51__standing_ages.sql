-- What lists of those who need somebody are read from, and when time alone changes a standing.
alter table skill_standing add column on_the_way boolean default false not null;
alter table skill_standing add column panels_waiting integer default 0 not null;
-- when the oldest of those panels was scored
alter table skill_standing add column waiting_since timestamp(6) with time zone;
alter table skill_standing add column holds_until timestamp(6) with time zone;
-- what was kept before is gathered anew soon after the start
update skill_standing set holds_until = timestamp with time zone '1970-01-01 00:00:00Z';
-- in the order of the list and with all that is counted, so that no more rows are opened than shown
create index skill_standing_waiting on skill_standing
  (workshop_id, waiting_since, person_id, skill_id, panels_waiting);
create index skill_standing_on_the_way on skill_standing (workshop_id, on_the_way, skill_id, person_id);
create index skill_standing_ages on skill_standing (holds_until);
