-- Where machines stood before, and what the weather was: both explain hours that the season alone does not.

create table machine_move (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  from_site_id uuid not null,
  until_date date not null, -- last day there
  unique (shop_id, id),
  unique (machine_id, until_date)
);
alter table machine_move add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table machine_move add foreign key (shop_id, from_site_id) references site (shop_id, id) on delete cascade;
create index on machine_move (from_site_id);

create table weather_day (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid, -- null = the whole region
  weather_date date not null,
  low_c double precision not null check (low_c between -90 and 70),
  high_c double precision not null check (high_c between -90 and 70),
  rain_mm double precision not null check (rain_mm between 0 and 2000),
  unique (shop_id, id),
  unique nulls not distinct (shop_id, site_id, weather_date),
  check (low_c <= high_c)
);
alter table weather_day add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
create index on weather_day (site_id);

grant select, insert, update, delete on machine_move, weather_day to deckround_app;
alter table machine_move enable row level security;
create policy of_this_shop on machine_move using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
alter table weather_day enable row level security;
create policy of_this_shop on weather_day using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
