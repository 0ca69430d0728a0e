-- What a visit has taken from stock: its parts are taken once, however often what it used is worked out or corrected.

create table part_taken (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  visit_id uuid not null,
  part_id uuid not null,
  asked numeric(12,3) not null check (asked >= 0), -- as many as the visit used
  from_van numeric(12,3) not null default 0 check (from_van >= 0), -- less than asked where stock had no more
  from_shelf numeric(12,3) not null default 0 check (from_shelf >= 0),
  unique (shop_id, id),
  unique (visit_id, part_id),
  check (from_van + from_shelf <= asked)
);
alter table part_taken add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete cascade;
alter table part_taken add foreign key (shop_id, part_id) references part (shop_id, id) on delete restrict;
create index on part_taken (part_id);

-- What was recorded as used was taken at once.
insert into part_taken (shop_id, visit_id, part_id, asked, from_shelf)
select shop_id, visit_id, part_id, sum(quantity), sum(quantity)
from part_use where visit_id is not null and part_id is not null
group by shop_id, visit_id, part_id;

-- What visits closed by now took without a record was not: shelves have been counted since, so that it is not taken late.
with standard as (
  select item.shop_id, item.visit_id, item.machine_id, item.id as item_id, own.part_id,
    own.quantity * case when own.per_spindle and item.slot is null then machine.spindles else 1 end as quantity
  from visit_item item
  join visit on visit.id = item.visit_id and visit.state = 'done'
  join machine on machine.id = item.machine_id
  join service_item_part own on own.item_id = item.service_item_id
  where item.state = 'done'
  union all
  select item.shop_id, item.visit_id, item.machine_id, item.id, stopgap.part_id, stopgap.part_quantity
  from visit_item item
  join visit on visit.id = item.visit_id and visit.state = 'done'
  join stopgap on stopgap.id = item.stopgap_id and stopgap.part_id is not null
  where item.state = 'done'
), told as (
  select distinct standard.item_id from standard
  join part_use on part_use.visit_id = standard.visit_id and part_use.machine_id = standard.machine_id
    and part_use.part_id = standard.part_id
)
insert into part_taken (shop_id, visit_id, part_id, asked)
select shop_id, visit_id, part_id, sum(quantity) from standard
where item_id not in (select item_id from told)
group by shop_id, visit_id, part_id
on conflict (visit_id, part_id) do update set asked = part_taken.asked + excluded.asked;

grant select, insert, update on part_taken to deckround_app;
alter table part_taken enable row level security;
create policy of_this_shop on part_taken
  using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
