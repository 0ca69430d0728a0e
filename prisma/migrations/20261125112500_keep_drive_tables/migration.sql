-- Drives between places as a road server told them are kept, so that planning does not wait for it every time.

create table drive_table (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  positions_hash text not null, -- SHA-256 of the server and the positions
  drives jsonb not null,
  fetched_at timestamptz(3) not null,
  unique (shop_id, id),
  unique (shop_id, positions_hash)
);

grant select, insert, update, delete on drive_table to deckround_app;
alter table drive_table enable row level security;
create policy of_this_shop on drive_table using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);

alter table plan_run add column warning text;
