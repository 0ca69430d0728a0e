-- Notices by e-mail: whom a site wants told of what, and every message with what became of it.

create table site_contact (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  name text not null,
  email text not null,
  language text not null default 'en' check (language in ('en', 'es')),
  notices text[] not null default '{}', -- event types that this person wants to be told of
  version integer not null default 1,
  unique (shop_id, id),
  unique (site_id, email)
);
alter table site_contact add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;

create table notice (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  contact_id uuid not null,
  event_id uuid not null,
  subject_id uuid not null, -- the visit or the stopgap; no reference: it may go
  state text not null default 'waiting' check (state in ('waiting', 'sent', 'refused', 'given-up', 'superseded')),
  attempts integer not null default 0,
  next_attempt_at timestamptz(3) not null,
  last_error text,
  sent_at timestamptz(3),
  unique (shop_id, id),
  unique (contact_id, event_id),
  check ((state = 'sent') = (sent_at is not null))
);
alter table notice add foreign key (shop_id, contact_id) references site_contact (shop_id, id) on delete cascade;
alter table notice add foreign key (shop_id, event_id) references outbox_event (shop_id, id) on delete cascade;
create index on notice (shop_id, next_attempt_at) where state = 'waiting';
create index on notice (event_id);

alter table stopgap add column limit_told_at timestamptz(3); -- when the nearing limit was told; once is enough

do $$
declare name text;
begin
  foreach name in array array['site_contact', 'notice'] loop
    execute format('grant select, insert, update on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid) with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name);
  end loop;
end $$;
grant delete on site_contact, notice to deckround_app;
