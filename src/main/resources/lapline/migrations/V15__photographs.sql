-- A picture of a panel; the picture itself lies in a file named by its hash, the same one once.
create table photograph (
  id uuid primary key,
  attempt_id uuid not null references attempt (id),
  hash varchar(64) not null,
  caption varchar(200) not null,
  width integer not null,
  height integer not null,
  added_at timestamp(6) with time zone not null,
  constraint photograph_once unique (attempt_id, hash)
);
create index photograph_by_hash on photograph (hash);
