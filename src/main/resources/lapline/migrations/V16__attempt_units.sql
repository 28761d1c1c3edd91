-- In which units the figures of a panel are meant: fixed when it is begun.
alter table attempt add column units varchar(12);
update attempt set units = (select p.units from person p where p.id = attempt.person_id);
alter table attempt alter column units set not null;
