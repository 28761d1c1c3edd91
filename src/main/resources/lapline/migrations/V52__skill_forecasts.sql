-- How many more panels were foretold after each panel, and what came of it once that was known.
create table skill_forecast (
  attempt_id uuid primary key references attempt (id),
  workshop_id uuid not null references workshop (id),
  person_id uuid not null references person (id),
  skill_id varchar(80) not null,
  rule_version varchar(40) not null,
  -- as many panels had been scored
  tried integer not null,
  made_at timestamp(6) with time zone not null,
  middle_panels integer,
  least_panels integer not null,
  -- none where it was too far off to say; that is shown, but no forecast to be held against
  most_panels integer,
  held_probability double precision not null,
  state varchar(10) not null,
  -- the true number, once it is known
  needed_panels integer
);
create index skill_forecast_by_person on skill_forecast (person_id, skill_id, tried);
-- all that its record counts
create index skill_forecast_counted on skill_forecast
  (workshop_id, state, most_panels, person_id, held_probability);
