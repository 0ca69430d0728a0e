-- What a part looked like when it came out, why it failed, and which failures one event caused; what re-fitting lives
-- taught, which interval changes it proposes and what became of them; blade speeds that were checked.

create table failure_cause (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  happened_on date not null,
  root_cause text not null,
  note text not null default '',
  unique (shop_id, id)
);
alter table failure_cause add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
create index on failure_cause (machine_id);

alter table component_life
  add column bearing_feel text check (bearing_feel in ('smooth', 'rough', 'loose', 'locked')),
  add column spacer_end_lip boolean,
  add column housing_step_wear text check (housing_step_wear in ('none', 'slight', 'worn')),
  add column debris_wrap text check (debris_wrap in ('none', 'grass', 'twine', 'wire')),
  add column debris_cup_missing boolean,
  add column grease_look text check (grease_look in ('fresh', 'dark', 'watery', 'metal', 'dry')),
  add column root_cause text,
  add column cause_id uuid; -- one event behind several failures, recorded once
alter table component_life add foreign key (shop_id, cause_id) references failure_cause (shop_id, id) on delete restrict;
create index on component_life (cause_id);

alter table completion add column cause_id uuid;
alter table completion add foreign key (shop_id, cause_id) references failure_cause (shop_id, id) on delete restrict;
create index on completion (cause_id);

create table life_run (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  status text not null default 'asked' check (status in ('asked', 'running', 'done', 'failed', 'cancelled')),
  as_of date not null,
  asked_by uuid, -- null = the monthly re-fit
  asked_at timestamptz(3) not null default now(),
  started_at timestamptz(3),
  finished_at timestamptz(3),
  lease_until timestamptz(3),
  lease_holder text,
  attempts integer not null default 0,
  result jsonb,
  error text,
  unique (shop_id, id)
);
alter table life_run add foreign key (shop_id, asked_by) references person (shop_id, id) on delete restrict;
create index on life_run (shop_id, asked_at);
-- One re-fit at a time: two workers that both find it due ask once.
create unique index one_life_run_at_a_time on life_run (shop_id) where status in ('asked', 'running');

create table learned_life (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  service_item_id uuid not null,
  run_id uuid not null,
  as_of date not null,
  basis text not null check (basis in ('own', 'pooled', 'prior')),
  lives integer not null check (lives >= 0),
  failures integer not null check (failures >= 0),
  shape double precision not null check (shape > 0),
  scale_hours double precision not null check (scale_hours > 0),
  opportunity_hours double precision check (opportunity_hours >= 0), -- null = leave working parts in place
  words text not null,
  unique (shop_id, id),
  unique (service_item_id),
  unique (shop_id, service_item_id)
);
alter table learned_life add foreign key (shop_id, service_item_id) references service_item (shop_id, id) on delete cascade;
alter table learned_life add foreign key (shop_id, run_id) references life_run (shop_id, id) on delete restrict;
create index on learned_life (run_id);

create table interval_proposal (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  service_item_id uuid not null,
  run_id uuid not null,
  state text not null default 'proposed' check (state in ('proposed', 'accepted', 'refused', 'reversed', 'superseded')),
  current_hours numeric(10,2),
  proposed_hours numeric(10,2) not null check (proposed_hours > 0),
  saves_cents_per_thousand_hours integer not null,
  evidence jsonb not null,
  sentence text not null,
  proposed_on date not null,
  decided_by uuid,
  decided_at timestamptz(3),
  decision_note text not null default '',
  reversed_by uuid,
  reversed_at timestamptz(3),
  version integer not null default 1,
  unique (shop_id, id),
  check ((state in ('accepted', 'refused', 'reversed')) = (decided_at is not null)),
  check ((state = 'reversed') = (reversed_at is not null))
);
alter table interval_proposal add foreign key (shop_id, service_item_id) references service_item (shop_id, id) on delete cascade;
alter table interval_proposal add foreign key (shop_id, run_id) references life_run (shop_id, id) on delete restrict;
alter table interval_proposal add foreign key (shop_id, decided_by) references person (shop_id, id) on delete restrict;
alter table interval_proposal add foreign key (shop_id, reversed_by) references person (shop_id, id) on delete restrict;
create index on interval_proposal (run_id);
create index on interval_proposal (decided_by);
create index on interval_proposal (reversed_by);
create unique index one_open_proposal_an_item on interval_proposal (service_item_id) where state = 'proposed';

create table speed_check (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  checked_at timestamptz(3) not null,
  checked_by uuid,
  blade_inches numeric(6,2) not null check (blade_inches > 0),
  spindle_rpm numeric(8,1) not null check (spindle_rpm > 0),
  feet_per_minute numeric(9,1) not null,
  limit_feet_per_minute numeric(9,1) not null,
  is_over boolean not null,
  note text not null default '',
  unique (shop_id, id)
);
alter table speed_check add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table speed_check add foreign key (shop_id, checked_by) references person (shop_id, id) on delete restrict;
create index on speed_check (machine_id, checked_at);
create index on speed_check (checked_by);

do $$
declare name text;
begin
  foreach name in array array['failure_cause', 'life_run', 'learned_life', 'interval_proposal', 'speed_check'] loop
    execute format('grant select, insert, update, delete on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid) with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name);
  end loop;
end $$;
