-- What a site says of a planned visit: it suits, or it should come on other days; and what the shop says to that.

create table visit_answer (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  visit_id uuid, -- emptied when planning again replaces the visit
  kind text not null check (kind in ('suits', 'move')),
  about_start timestamptz(3) not null, -- the time that was on the screen then
  about_date date not null,
  reason text not null default '',
  days date[] not null default '{}', -- that would suit; empty = none named
  said_at timestamptz(3) not null,
  said_by uuid not null,
  state text not null check (state in ('noted', 'open', 'met', 'declined', 'withdrawn')),
  reply text not null default '',
  replied_at timestamptz(3),
  replied_by uuid,
  version integer not null default 1,
  unique (shop_id, id),
  check (kind <> 'move' or reason <> ''),
  check (state <> 'declined' or reply <> '')
);
alter table visit_answer add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
alter table visit_answer add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete set null (visit_id);
alter table visit_answer add foreign key (shop_id, said_by) references person (shop_id, id) on delete restrict;
alter table visit_answer add foreign key (shop_id, replied_by) references person (shop_id, id) on delete restrict;
create index on visit_answer (visit_id);
create index on visit_answer (site_id);
create index on visit_answer (said_by);
create index on visit_answer (replied_by);
create index on visit_answer (shop_id, said_at);

-- However a visit comes to another day: a wish for that day, or for any other, is met; so it is when nobody comes any more.
create function meet_wishes() returns trigger language plpgsql as $$
begin
  update visit_answer a
    set state = 'met', replied_at = now(), version = a.version + 1
    where a.shop_id = old.shop_id and a.visit_id = old.id and a.state = 'open'
      and (tg_op = 'DELETE' or new.state = 'cancelled'
           or (new.visit_date <> a.about_date and (a.days = '{}' or new.visit_date = any (a.days))));
  return case when tg_op = 'DELETE' then old else new end;
end $$;
create trigger meet_wishes before delete or update of visit_date, state on visit for each row execute function meet_wishes();

grant select, insert, update on visit_answer to deckround_app;
alter table visit_answer enable row level security;
create policy of_this_shop on visit_answer
  using (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid)
  with check (shop_id = nullif(current_setting('app.shop_id', true), '')::uuid);
