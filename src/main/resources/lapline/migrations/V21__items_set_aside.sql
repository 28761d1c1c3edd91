-- An item that a workshop draws no more, until it is brought back.
create table item_set_aside (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  unit_id varchar(80) not null,
  item_id varchar(80) not null,
  set_aside_at timestamp(6) with time zone not null,
  set_aside_by uuid not null references person (id),
  reason varchar(500) not null,
  -- workshop, unit and item while it is set aside, nothing after: two windows cannot do it twice
  open_key varchar(200),
  back_at timestamp(6) with time zone,
  back_by uuid references person (id),
  constraint item_set_aside_open_key unique (open_key)
);
create index item_set_aside_by_item on item_set_aside (workshop_id, unit_id, item_id, set_aside_at desc);
create index paper_by_unit on paper (workshop_id, unit_id, handed_in_at);
