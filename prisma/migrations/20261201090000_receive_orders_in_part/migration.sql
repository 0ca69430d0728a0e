-- An order of parts comes in more than one delivery, or never: what is still to come of it stands in one place.

alter table part_order
  add column received_quantity numeric(12,3) not null default 0,
  add column cancelled_on date;
update part_order set received_quantity = quantity where received_on is not null;
alter table part_order
  add column outstanding numeric(12,3) not null
    generated always as (case when cancelled_on is null then quantity - received_quantity else 0 end) stored,
  add check (received_quantity between 0 and quantity),
  add check ((received_on is null) = (received_quantity = 0));
