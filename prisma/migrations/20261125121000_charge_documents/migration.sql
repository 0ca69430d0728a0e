-- What finished visits cost: settings, documents that cannot change once they are issued, what accounting said of them, and
-- a trail of who did what.

create table charge_settings (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  customer_id uuid, -- null = the shop's own; else what differs for that customer
  settings jsonb not null,
  version integer not null default 1,
  unique (shop_id, id),
  unique nulls not distinct (shop_id, customer_id)
);
alter table charge_settings add foreign key (shop_id, customer_id) references customer (shop_id, id) on delete cascade;
create index on charge_settings (customer_id);

create table charge_document (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  visit_id uuid not null,
  customer_id uuid not null,
  site_id uuid not null,
  kind text not null check (kind in ('invoice', 'credit')),
  state text not null default 'draft' check (state in ('draft', 'issued')),
  number integer check (number > 0),
  currency varchar(3) not null,
  total_minor integer not null,
  travel_minor integer not null default 0 check (travel_minor >= 0),
  serviced_on date not null,
  issued_on date,
  due_on date,
  credits_id uuid,  -- the document that this credit takes back
  replaces_id uuid, -- the credited document that this one stands for
  record jsonb not null,   -- what was done, as it was charged
  document jsonb not null, -- what was computed from it
  created_at timestamptz(3) not null default now(),
  issued_at timestamptz(3),
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, number),
  unique (credits_id),
  unique (replaces_id),
  check ((state = 'issued') = (number is not null and issued_on is not null and issued_at is not null)),
  check ((kind = 'credit') = (credits_id is not null)),
  check (kind = 'invoice' or state = 'issued')
);
alter table charge_document add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table charge_document add foreign key (shop_id, customer_id) references customer (shop_id, id) on delete restrict;
alter table charge_document add foreign key (shop_id, site_id) references site (shop_id, id) on delete restrict;
alter table charge_document add foreign key (shop_id, credits_id) references charge_document (shop_id, id) on delete restrict;
alter table charge_document add foreign key (shop_id, replaces_id) references charge_document (shop_id, id) on delete restrict;
-- A visit is billed once: further documents of it replace one that was credited.
create unique index one_first_document_a_visit on charge_document (visit_id) where kind = 'invoice' and replaces_id is null;
create index on charge_document (visit_id);
create index on charge_document (shop_id, created_at, id);
create index on charge_document (customer_id);
create index on charge_document (site_id);

-- Numbers run without gaps and what is issued stays as it is, whoever writes. Two issues at the same time cannot both
-- take the next number: the second fails on the unique number unless it waited for the shop's sequence row first.
create function keep_issued_documents() returns trigger language plpgsql as $$
declare expected integer;
begin
  if tg_op <> 'INSERT' and old.state = 'issued' then
    -- Only together with the whole shop.
    if tg_op = 'DELETE' and not exists (select from shop where id = old.shop_id) then return old; end if;
    raise exception 'charge document % is issued: it cannot be changed', old.number using errcode = 'restrict_violation';
  end if;
  if tg_op = 'DELETE' then return old; end if;
  if new.state = 'issued' then
    select coalesce(max(number), 0) + 1 into expected from charge_document where shop_id = new.shop_id;
    if new.number is distinct from expected then
      raise exception 'the next charge document has the number %', expected using errcode = 'check_violation';
    end if;
  end if;
  return new;
end
$$;
create trigger keep_issued_documents before insert or update or delete on charge_document
  for each row execute function keep_issued_documents();

create table accounting_state (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  document_id uuid not null,
  state text not null default 'waiting' check (state in ('waiting', 'acknowledged', 'refused', 'paid')),
  receiver_number text,
  refused_reason text,
  paid_on date,
  payment_reference text,
  version integer not null default 1,
  unique (shop_id, id),
  unique (document_id),
  check ((state in ('acknowledged', 'paid')) = (receiver_number is not null)),
  check ((state = 'refused') = (refused_reason is not null)),
  check ((state = 'paid') = (paid_on is not null))
);
alter table accounting_state add foreign key (shop_id, document_id) references charge_document (shop_id, id) on delete cascade;

-- Every change of an issued document, in the order of commit: the number comes from a row that is locked until then, so
-- that a reader who has seen n has seen all before it.
create table accounting_change (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  sequence integer not null check (sequence > 0),
  document_id uuid not null,
  what text not null check (what in ('issued', 'credited', 'acknowledged', 'refused', 'paid')),
  at timestamptz(3) not null,
  unique (shop_id, id),
  unique (shop_id, sequence)
);
alter table accounting_change add foreign key (shop_id, document_id) references charge_document (shop_id, id) on delete cascade;
create index on accounting_change (document_id);

create table shop_sequence (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  name text not null,
  value integer not null default 0,
  unique (shop_id, id),
  unique (shop_id, name)
);

create table audit_entry (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  at timestamptz(3) not null,
  actor_kind text not null check (actor_kind in ('person', 'integration')),
  actor_id uuid not null,
  actor_name text not null,
  action text not null,
  subject_kind text not null,
  subject_id uuid not null,
  detail jsonb not null default '{}',
  unique (shop_id, id)
);
create index on audit_entry (shop_id, at, id);

do $$
declare name text;
begin
  foreach name in array array['charge_settings', 'charge_document', 'accounting_state', 'accounting_change', 'shop_sequence', 'audit_entry'] loop
    execute format('grant select, insert on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid) with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name);
  end loop;
end $$;
grant update on charge_settings, charge_document, accounting_state, shop_sequence to deckround_app;
