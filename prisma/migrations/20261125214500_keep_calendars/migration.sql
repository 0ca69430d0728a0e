-- Visits as calendars show them. A calendar entry outlives its visit: planning again deletes proposed visits, and a
-- subscriber learns of that only from an entry that says CANCELLED. Kept by a trigger, so that no way of changing a visit
-- can forget it.

create table calendar_entry (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  uid uuid not null,
  visit_id uuid,                              -- no reference: it is emptied when the visit goes
  site_id uuid not null,
  technician_id uuid not null,
  is_current boolean not null default true,   -- false: the visit went to another technician, whose entry has the same uid
  start_at timestamptz(3) not null,
  end_at timestamptz(3) not null,
  status text not null check (status in ('confirmed', 'tentative', 'cancelled')),
  sequence integer not null default 0,
  changed_at timestamptz(3) not null,
  unique (shop_id, id),
  unique (shop_id, uid, technician_id),
  unique (shop_id, visit_id)
);
alter table calendar_entry add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
alter table calendar_entry add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete cascade;
create index on calendar_entry (site_id, start_at);
create index on calendar_entry (technician_id, start_at);
create index on calendar_entry (start_at) where visit_id is null;

create function calendar_status(visit_state text) returns text language sql immutable as $$
  select case visit_state when 'proposed' then 'tentative' when 'cancelled' then 'cancelled' else 'confirmed' end
$$;

create function keep_calendar() returns trigger language plpgsql as $$
declare
  entry calendar_entry;
  status_now text;
begin
  if tg_op = 'DELETE' then
    update calendar_entry
      set visit_id = null,
        sequence = sequence + case when status = 'cancelled' then 0 else 1 end,
        changed_at = case when status = 'cancelled' then changed_at else now() end,
        status = 'cancelled'
      where shop_id = old.shop_id and visit_id = old.id;
    return null;
  end if;
  status_now := calendar_status(new.state);
  if tg_op = 'INSERT' then
    -- A plan made again gives a site a new row for the same trip: whoever has it in a calendar sees it move.
    select c.* into entry from calendar_entry c
      where c.shop_id = new.shop_id and c.site_id = new.site_id and c.visit_id is null and c.is_current
        and c.xmin = pg_current_xact_id()::xid
      order by c.technician_id = new.technician_id desc, abs(extract(epoch from c.start_at - new.start_at)), c.id
      limit 1;
  else
    select c.* into entry from calendar_entry c where c.shop_id = new.shop_id and c.visit_id = new.id;
  end if;
  if entry.id is null then
    insert into calendar_entry (shop_id, uid, visit_id, site_id, technician_id, start_at, end_at, status, changed_at)
      values (new.shop_id, new.id, new.id, new.site_id, new.technician_id, new.start_at, new.end_at, status_now, now());
  elsif entry.technician_id <> new.technician_id then
    update calendar_entry
      set visit_id = null, is_current = false, status = 'cancelled', sequence = entry.sequence + 1, changed_at = now()
      where id = entry.id;
    insert into calendar_entry as c
      (shop_id, uid, visit_id, site_id, technician_id, start_at, end_at, status, sequence, changed_at)
      values (new.shop_id, entry.uid, new.id, new.site_id, new.technician_id, new.start_at, new.end_at, status_now,
        entry.sequence + 1, now())
      on conflict (shop_id, uid, technician_id) do update
        set visit_id = excluded.visit_id, is_current = true, site_id = excluded.site_id, start_at = excluded.start_at,
          end_at = excluded.end_at, status = excluded.status, sequence = excluded.sequence, changed_at = excluded.changed_at;
  elsif (entry.site_id, entry.start_at, entry.end_at, entry.status)
      is distinct from (new.site_id, new.start_at, new.end_at, status_now) then
    update calendar_entry
      set visit_id = new.id, site_id = new.site_id, start_at = new.start_at, end_at = new.end_at, status = status_now,
        sequence = entry.sequence + 1, changed_at = now()
      where id = entry.id;
  end if;
  return null;
end
$$;
create trigger keep_calendar after insert or delete or update of site_id, technician_id, start_at, end_at, state on visit
  for each row execute function keep_calendar();

insert into calendar_entry (shop_id, uid, visit_id, site_id, technician_id, start_at, end_at, status, changed_at)
  select shop_id, id, id, site_id, technician_id, start_at, end_at, calendar_status(state), now() from visit;

-- Who holds the secret of an address reads that calendar, without signing in.
create table calendar_address (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  name text not null default '',
  technician_id uuid,
  site_id uuid,
  token_hash text not null unique,
  created_by uuid not null,
  created_at timestamptz(3) not null default now(),
  last_read_at timestamptz(3),
  revoked_at timestamptz(3),
  unique (shop_id, id),
  check ((technician_id is null) <> (site_id is null))
);
alter table calendar_address add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete cascade;
alter table calendar_address add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
alter table calendar_address add foreign key (shop_id, created_by) references person (shop_id, id) on delete cascade;

do $$
declare name text;
begin
  foreach name in array array['calendar_entry', 'calendar_address'] loop
    execute format('grant select, insert, update on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid) with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name);
  end loop;
end $$;
