-- A question that no longer counts on a paper, since it was set aside after the paper was handed in.
alter table paper_mark add column left_out boolean default false not null;

-- Each time a paper was marked anew: how it stood before and after, and without which questions. What
-- the paper says of the day it was handed in ('result') is never changed.
create table paper_marked_anew (
  id uuid primary key,
  paper_id uuid not null references paper (id),
  marked_at timestamp(6) with time zone not null,
  marked_by uuid not null references person (id),
  item_id varchar(80) not null,
  -- true where the question was taken out, false where it counts again
  left_out boolean not null,
  reason varchar(500) not null,
  score_before double precision not null,
  passed_before boolean not null,
  -- ids of the items that did not count, with commas between them
  without_before text not null,
  score_after double precision not null,
  passed_after boolean not null,
  without_after text not null
);
create index paper_marked_anew_by_paper on paper_marked_anew (paper_id, marked_at);
