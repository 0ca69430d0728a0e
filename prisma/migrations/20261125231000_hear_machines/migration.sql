-- Machines heard from: snapshots of other systems, sent here or fetched, and which of our machines they speak of.

create table telematics_source (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  name text not null,
  url text not null,
  authorization_header text,              -- sent as it is: fetching needs it
  every_seconds integer not null check (every_seconds >= 60),
  state text not null default 'active' check (state in ('active', 'disabled')),
  next_poll_at timestamptz(3) not null,
  last_poll_at timestamptz(3),
  last_error text,
  failures integer not null default 0,    -- in a row
  next_page text,                         -- where a look that was broken off goes on
  created_at timestamptz(3) not null default now(),
  version integer not null default 1,
  unique (shop_id, id)
);
create index on telematics_source (next_poll_at) where state = 'active';

create table telematics_unit (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  identity text not null,                 -- maker and serial, else PIN, else the sender's label, in small letters
  maker text,
  model text,
  serial text,
  pin text,
  equipment_id text,
  machine_id uuid,
  matched_by text check (matched_by in ('serial', 'label', 'hand')), -- hand without a machine: it is none of ours
  first_heard_at timestamptz(3) not null,
  last_heard_at timestamptz(3) not null,
  last_hours numeric(10, 2),
  last_hours_at timestamptz(3),
  last_fault text,
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, identity),
  check (machine_id is null or matched_by is not null)
);
alter table telematics_unit add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete restrict;
create index on telematics_unit (machine_id);

do $$
declare name text;
begin
  foreach name in array array['telematics_source', 'telematics_unit'] loop
    execute format('grant select, insert, update on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid) with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name);
  end loop;
end $$;
grant delete on telematics_source to deckround_app;
