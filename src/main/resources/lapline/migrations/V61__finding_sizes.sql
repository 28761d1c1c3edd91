-- How far a cause put its panel out, so that it can be seen whether it shrinks from panel to panel: in SI, of
-- the dimension named beside it. Empty where the cause has no size, and for panels judged before.
alter table attempt_finding add column off_value double precision;
alter table attempt_finding add column off_uncertainty double precision;
alter table attempt_finding add column off_dimension varchar(30);
