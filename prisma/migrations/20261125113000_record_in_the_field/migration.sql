-- What technicians record where the machines stand, often long before it can be sent: a log that only grows, under the
-- ids that the devices made, and what follows from it: parts used, time worked, photos.

-- A person drives one technician's days, and nobody else's.
create unique index one_person_a_technician on technician (person_id) where person_id is not null;

create table field_record (
  id uuid primary key, -- made on the device: sent twice, it is recorded once
  shop_id uuid not null references shop (id) on delete cascade,
  kind text not null,
  visit_id uuid, -- no reference: planning again may have replaced the visit before the record arrived
  machine_id uuid,
  recorded_by uuid not null,
  device_at timestamptz(3) not null,
  received_at timestamptz(3) not null,
  skew_seconds integer not null default 0, -- what the device's clock was behind ours when it sent
  request_hash text not null,
  fact jsonb not null,
  state text not null check (state in ('applied', 'review', 'accepted', 'dismissed')),
  review_reason text,
  decided_by uuid,
  decided_at timestamptz(3),
  version integer not null default 1,
  unique (shop_id, id),
  check ((state in ('accepted', 'dismissed')) = (decided_at is not null))
);
alter table field_record add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table field_record add foreign key (shop_id, recorded_by) references person (shop_id, id) on delete restrict;
alter table field_record add foreign key (shop_id, decided_by) references person (shop_id, id) on delete restrict;
create index on field_record (machine_id);
create index on field_record (visit_id);
create index on field_record (recorded_by);
create index on field_record (decided_by);
create index on field_record (shop_id, received_at) where state = 'review';

create table part_use (
  id uuid primary key, -- that of its field record
  shop_id uuid not null references shop (id) on delete cascade,
  visit_id uuid,
  machine_id uuid not null,
  part_id uuid, -- null = not in the list of parts: the name says what it was
  name text not null,
  quantity numeric(12,3) not null check (quantity > 0),
  used_at timestamptz(3) not null,
  unique (shop_id, id)
);
alter table part_use add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table part_use add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table part_use add foreign key (shop_id, part_id) references part (shop_id, id) on delete restrict;
create index on part_use (visit_id);
create index on part_use (machine_id);
create index on part_use (part_id);

create table work_time (
  id uuid primary key, -- that of its field record
  shop_id uuid not null references shop (id) on delete cascade,
  visit_id uuid,
  technician_id uuid,
  started_at timestamptz(3) not null,
  ended_at timestamptz(3) not null check (ended_at >= started_at),
  unique (shop_id, id)
);
alter table work_time add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table work_time add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete restrict;
create index on work_time (visit_id);
create index on work_time (technician_id);

create table photo (
  id uuid primary key, -- made on the device
  shop_id uuid not null references shop (id) on delete cascade,
  visit_id uuid, -- no reference, as above
  machine_id uuid not null,
  road_call_id uuid,
  taken_at timestamptz(3) not null,
  taken_by uuid,
  received_at timestamptz(3) not null,
  content_type text not null check (content_type in ('image/jpeg', 'image/png', 'image/webp')),
  size_bytes integer not null check (size_bytes > 0),
  sha256 text not null,
  bytes bytea not null,
  unique (shop_id, id)
);
alter table photo add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table photo add foreign key (shop_id, road_call_id) references road_call (shop_id, id) on delete cascade;
alter table photo add foreign key (shop_id, taken_by) references person (shop_id, id) on delete restrict;
create index on photo (machine_id, taken_at);
create index on photo (visit_id);
create index on photo (road_call_id);
create index on photo (taken_by);

do $$
declare
  name text;
begin
  foreach name in array array['field_record', 'part_use', 'work_time', 'photo'] loop
    execute format('grant select, insert, update, delete on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)
         with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name
    );
  end loop;
end
$$;
