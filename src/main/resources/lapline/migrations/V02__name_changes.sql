-- A name or sign-in name that was corrected: what it was, by whom and when.
create table name_change (
  id uuid primary key,
  person_id uuid not null references person (id),
  what varchar(20) not null,
  before_text varchar(120) not null,
  after_text varchar(120) not null,
  changed_by uuid not null references person (id),
  changed_at timestamp(6) with time zone not null
);
create index name_change_by_person on name_change (person_id, changed_at);
