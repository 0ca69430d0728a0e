-- Labels on machines: whoever stands before one may enter its hours, and no more, until it is revoked. The id is printed as
-- it is, so it cannot be kept as a hash; it says nothing of the shop.

create table machine_label (
  id text primary key check (id ~ '^[0-9A-HJKMNP-TV-Z]{26}$'), -- Crockford base32, 130 random bits
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  made_at timestamptz(3) not null,
  made_by uuid not null,
  revoked_at timestamptz(3),
  revoked_by uuid,
  unique (shop_id, id),
  check ((revoked_at is null) = (revoked_by is null))
);
alter table machine_label add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table machine_label add foreign key (shop_id, made_by) references person (shop_id, id) on delete restrict;
alter table machine_label add foreign key (shop_id, revoked_by) references person (shop_id, id) on delete restrict;
-- A machine has one label that counts: a lost or torn one is revoked before the next is made, or printed again.
create unique index one_label_a_machine on machine_label (machine_id) where revoked_at is null;
create index on machine_label (shop_id, made_at);
create index on machine_label (machine_id);
create index on machine_label (made_by);
create index on machine_label (revoked_by);

grant select, insert, update on machine_label to deckround_app;
alter table machine_label enable row level security;
create policy of_this_shop on machine_label
  using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);

alter table reading drop constraint reading_source_check;
alter table reading add constraint reading_source_check
  check (source in ('technician', 'supervisor', 'telematics', 'manager', 'label'));
