-- How wide a verdict's uncertainty was beside its target (4 u over the range's width, 1 over the index Cm of
-- JCGM 106, 7.6.3), for studying tasks without opening judgements. Empty where the target has one limit, where
-- nothing was judged, and for panels judged before this was kept.
alter table attempt_verdict add column uncertainty_share double precision;
-- all panels of one task of a workshop
create index attempt_by_task on attempt (workshop_id, task_id, scored_at);
