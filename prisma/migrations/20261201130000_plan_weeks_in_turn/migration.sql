-- Weeks asked for together are planned one after the other: each run knows the one it follows. What was only proposed for
-- the weeks after it gives way up to `replans_to`, since the runs that follow plan those days anew.

alter table plan_run
  add column follows_run_id uuid,
  add column replans_to date check (replans_to > week_of),
  add unique (shop_id, follows_run_id),
  add foreign key (shop_id, follows_run_id) references plan_run (shop_id, id) on delete cascade;
