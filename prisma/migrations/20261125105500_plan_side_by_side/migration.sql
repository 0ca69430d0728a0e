-- A plan may be searched by two threads that meet, and routes combined near the end: both belong to what repeats a run.

alter table plan_run
  add column threads integer not null default 1 check (threads in (1, 2)),
  add column combine boolean not null default false;
