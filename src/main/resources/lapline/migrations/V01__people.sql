-- A workshop is the wall around its people's data.
create table workshop (
  id uuid primary key,
  name varchar(120) not null,
  zone varchar(60) not null,
  units varchar(10) not null,
  created_at timestamp(6) with time zone not null
);

create table person (
  id uuid primary key,
  workshop_id uuid not null references workshop (id),
  name varchar(120) not null,
  sign_in_name varchar(80) not null,
  password_hash varchar(500),
  units varchar(10) not null,
  active boolean not null,
  created_at timestamp(6) with time zone not null,
  constraint person_sign_in_name unique (sign_in_name)
);
create index person_by_workshop on person (workshop_id, name);

create table person_role (
  person_id uuid not null references person (id),
  role varchar(20) not null,
  primary key (person_id, role)
);

-- A link that lets one person choose a password once; only its digest is kept.
create table password_link (
  digest varchar(64) primary key,
  person_id uuid not null references person (id),
  expires_at timestamp(6) with time zone not null,
  used_at timestamp(6) with time zone
);

-- A token a person makes for a program; only its digest is kept.
create table access_token (
  id uuid primary key,
  person_id uuid not null references person (id),
  name varchar(80) not null,
  digest varchar(64) not null unique,
  created_at timestamp(6) with time zone not null,
  last_used_at timestamp(6) with time zone,
  revoked_at timestamp(6) with time zone
);
create index access_token_by_person on access_token (person_id);
