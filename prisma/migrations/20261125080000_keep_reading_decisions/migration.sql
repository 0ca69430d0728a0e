-- What a person decided about a reading used to overwrite what had been found and decided before. Every decision is
-- kept from now on, with what stood before it; the service may add rows and read them, never change them.

create table reading_decision (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  reading_id uuid not null,
  decision text not null check (decision in ('accept', 'set-aside', 'correct')),
  hours_before numeric(10,2) not null,
  hours_after numeric(10,2), -- null when no hours are believed any more
  status_before text not null check (status_before in ('accepted', 'set-aside')),
  code_before text,
  reason_before text,
  reason text,
  decided_by uuid not null,
  decided_at timestamptz(3) not null,
  unique (shop_id, id),
  check (hours_before >= 0 and hours_before < 1000000),
  check (hours_after >= 0 and hours_after < 1000000),
  check ((decision = 'set-aside') = (hours_after is null)),
  check (decision <> 'set-aside' or reason is not null)
);

alter table reading_decision add foreign key (shop_id, reading_id) references reading (shop_id, id) on delete cascade;
alter table reading_decision add foreign key (shop_id, decided_by) references person (shop_id, id) on delete restrict;

create index on reading_decision (reading_id, decided_at);
create index on reading_decision (decided_by);

grant select, insert on reading_decision to deckround_app;
alter table reading_decision enable row level security;
create policy of_this_shop on reading_decision using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
