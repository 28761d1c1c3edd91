-- What a panel had come to when its readings were opened again, with the further places that were to be
-- read then, as JSON; null where that never happened.
alter table attempt add column again text;
