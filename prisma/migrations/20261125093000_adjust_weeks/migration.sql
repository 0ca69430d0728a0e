-- A planned week can be changed by hand and by road calls: visits held fast, sites barred, events that machines must be
-- ready for, a trace of every change with its price, and what a road call needs to be planned.

alter table visit add column pinned boolean not null default false;

alter table visit_item add column road_call_id uuid;
alter table visit_item add foreign key (shop_id, road_call_id) references road_call (shop_id, id) on delete restrict;
create index on visit_item (road_call_id);

alter table road_call
  add column symptom_code text,
  add column answers jsonb not null default '{}',
  add column minutes integer not null default 60 check (minutes between 1 and 960),
  add column skill text,
  add column down_cents_per_day integer not null default 0 check (down_cents_per_day >= 0),
  add column options jsonb, -- the last options given, with the stamp of the week they are for
  add column closed_on date;

create table visit_bar (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  technician_id uuid, -- null = nobody may be sent
  bar_date date,      -- null = on no day
  reason text not null default '',
  unique (shop_id, id),
  check (technician_id is not null or bar_date is not null),
  unique nulls not distinct (site_id, technician_id, bar_date)
);
alter table visit_bar add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
alter table visit_bar add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete cascade;
create index on visit_bar (technician_id);

create table site_event (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  event_date date not null,
  from_minute integer not null check (from_minute between 0 and 1440), -- all machines are able to mow by then
  name text not null,
  unique (shop_id, id),
  unique (site_id, event_date)
);
alter table site_event add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;

create table week_change (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  plan_run_id uuid not null,
  kind text not null check (kind in ('move', 'road-call')),
  made_at timestamptz(3) not null,
  made_by uuid,
  cents integer not null,
  change jsonb not null,
  unique (shop_id, id)
);
alter table week_change add foreign key (shop_id, plan_run_id) references plan_run (shop_id, id) on delete cascade;
alter table week_change add foreign key (shop_id, made_by) references person (shop_id, id) on delete restrict;
create index on week_change (plan_run_id, made_at);
create index on week_change (made_by);

grant select, insert, update, delete on visit_bar, site_event to deckround_app;
grant select, insert on week_change to deckround_app;

alter table visit_bar enable row level security;
create policy of_this_shop on visit_bar using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
alter table site_event enable row level security;
create policy of_this_shop on site_event using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
alter table week_change enable row level security;
create policy of_this_shop on week_change using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
