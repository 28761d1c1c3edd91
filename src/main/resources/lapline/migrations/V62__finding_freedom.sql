-- On how many degrees of freedom the uncertainty of that distance rests. Empty where the uncertainty is taken
-- as known, as it was for every panel judged before.
alter table attempt_finding add column off_freedom double precision;
