-- Events for other systems: written in the transaction that makes them true, delivered at least once.

create table webhook_endpoint (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  url text not null,
  description text not null default '',
  types text[] not null default '{}', -- empty = every type
  secret text not null,               -- signing needs it as it is
  previous_secret text,               -- signs as well until then, so that a receiver can change over
  previous_until timestamptz(3),
  state text not null default 'active' check (state in ('active', 'disabled')),
  disabled_reason text,
  failing_since timestamptz(3),
  created_at timestamptz(3) not null default now(),
  version integer not null default 1,
  unique (shop_id, id),
  check ((state = 'disabled') = (disabled_reason is not null)),
  check ((previous_secret is null) = (previous_until is null))
);

create table outbox_event (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  type text not null,
  occurred_at timestamptz(3) not null,
  body text not null, -- the exact bytes that are signed and sent
  unique (shop_id, id)
);
create index on outbox_event (shop_id, occurred_at);

create table webhook_delivery (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  endpoint_id uuid not null,
  event_id uuid not null,
  state text not null default 'waiting' check (state in ('waiting', 'delivered')),
  attempts integer not null default 0,
  next_attempt_at timestamptz(3) not null,
  last_status integer,
  last_error text,
  delivered_at timestamptz(3),
  unique (shop_id, id),
  unique (endpoint_id, event_id),
  check ((state = 'delivered') = (delivered_at is not null))
);
alter table webhook_delivery add foreign key (shop_id, endpoint_id) references webhook_endpoint (shop_id, id) on delete cascade;
alter table webhook_delivery add foreign key (shop_id, event_id) references outbox_event (shop_id, id) on delete cascade;
create index on webhook_delivery (endpoint_id, next_attempt_at) where state = 'waiting';
create index on webhook_delivery (event_id);

do $$
declare name text;
begin
  foreach name in array array['webhook_endpoint', 'outbox_event', 'webhook_delivery'] loop
    execute format('grant select, insert, update on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid) with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name);
  end loop;
end $$;
grant delete on webhook_endpoint, webhook_delivery to deckround_app;
revoke update on outbox_event from deckround_app;
