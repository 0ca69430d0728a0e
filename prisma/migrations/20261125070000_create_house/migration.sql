-- The whole house of the first version. Every row belongs to a shop; references between rows carry the shop with
-- them, so that no row can point into another shop even where row-level security is not in force.

-- The tenant, its people and how they sign in

create table shop (
  id uuid primary key default gen_random_uuid(),
  name text not null,
  time_zone text not null,
  currency varchar(3) not null default 'USD',
  settings jsonb not null default '{}',
  created_at timestamptz(3) not null default now(),
  version integer not null default 1
);

create table person (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  name text not null,
  email text not null,
  role text not null check (role in ('manager', 'technician', 'supervisor')),
  password_hash text,
  active boolean not null default true,
  created_at timestamptz(3) not null default now(),
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, email)
);

create table session (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  person_id uuid not null,
  token_hash text not null,
  created_at timestamptz(3) not null default now(),
  last_seen_at timestamptz(3) not null default now(),
  expires_at timestamptz(3) not null,
  ended_at timestamptz(3),
  unique (shop_id, id),
  unique (token_hash)
);

create table integration_key (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  name text not null,
  prefix text not null,
  key_hash text not null,
  scopes text[] not null default '{}',
  created_by uuid,
  created_at timestamptz(3) not null default now(),
  expires_at timestamptz(3),
  last_used_at timestamptz(3),
  revoked_at timestamptz(3),
  unique (shop_id, id),
  unique (key_hash)
);

create table idempotent_request (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  scope text not null,
  key text not null,
  request_hash text not null,
  response_status integer,
  response_body jsonb,
  created_at timestamptz(3) not null default now(),
  expires_at timestamptz(3) not null,
  unique (shop_id, id),
  unique (shop_id, scope, key)
);

-- Who drives

create table technician (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  code text not null,
  name text not null,
  person_id uuid,
  base_latitude double precision not null,
  base_longitude double precision not null,
  time_zone text not null,
  wage_cents_per_hour integer not null,
  overtime_cents_per_hour integer not null,
  max_overtime_minutes integer not null default 0,
  lunch_minutes integer not null default 30,
  lunch_earliest_minute integer not null default 660,
  lunch_latest_minute integer not null default 810,
  active boolean not null default true,
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, code),
  check (base_latitude between -90 and 90 and base_longitude between -180 and 180),
  check (wage_cents_per_hour >= 0 and overtime_cents_per_hour >= 0 and max_overtime_minutes between 0 and 480),
  check (lunch_minutes between 0 and 120 and lunch_earliest_minute <= lunch_latest_minute)
);

create table technician_skill (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  technician_id uuid not null,
  skill text not null,
  unique (shop_id, id),
  unique (technician_id, skill)
);

create table technician_shift (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  technician_id uuid not null,
  weekday integer not null, -- ISO 8601: 1 = Monday … 7 = Sunday
  start_minute integer not null,
  end_minute integer not null,
  unique (shop_id, id),
  unique (technician_id, weekday, start_minute),
  check (weekday between 1 and 7),
  check (start_minute >= 0 and end_minute <= 1440 and start_minute < end_minute)
);

create table technician_absence (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  technician_id uuid not null,
  from_date date not null,
  to_date date not null,
  reason text,
  unique (shop_id, id),
  check (from_date <= to_date)
);

-- Whose machines, and where they stand

create table customer (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  code text not null,
  name text not null,
  billing_email text,
  terms_days integer not null default 30,
  tax_exempt boolean not null default false,
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, code),
  check (terms_days between 0 and 365)
);

create table site (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  customer_id uuid not null,
  code text not null,
  name text not null,
  latitude double precision not null,
  longitude double precision not null,
  time_zone text not null,
  setup_minutes integer not null default 10,
  max_machines_down integer not null default 1,
  down_rule text not null default 'one-by-one' check (down_rule in ('one-by-one', 'whole-visit')),
  preferred_technician_id uuid,
  preference_cents integer not null default 0,
  visit_fee_cents integer not null default 0,
  gate_notes text not null default '',
  cautions text not null default '',
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, code),
  check (latitude between -90 and 90 and longitude between -180 and 180),
  check (setup_minutes between 0 and 480 and max_machines_down >= 1)
);

create table site_access_window (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  weekday integer not null,
  open_minute integer not null,
  close_minute integer not null,
  unique (shop_id, id),
  unique (site_id, weekday, open_minute),
  check (weekday between 1 and 7),
  check (open_minute >= 0 and close_minute <= 1440 and open_minute < close_minute)
);

create table site_blackout (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  from_date date not null,
  to_date date not null,
  reason text not null default '',
  unique (shop_id, id),
  unique (site_id, from_date, to_date),
  check (from_date <= to_date)
);

-- the sites a grounds supervisor may see
create table person_site (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  person_id uuid not null,
  site_id uuid not null,
  unique (shop_id, id),
  unique (person_id, site_id)
);

-- Machines, their meters and what the meters showed

create table machine_class (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  code text not null,
  name text not null,
  default_spindles integer not null default 3,
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, code)
);

-- shared preparation of a machine: counted once per machine and visit
create table preparation_state (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  class_id uuid not null,
  code text not null,
  name text not null,
  minutes integer not null,
  parent_code text,
  cautions text[] not null default '{}',
  source text not null,
  unique (shop_id, id),
  unique (class_id, code),
  check (minutes between 0 and 480),
  check (parent_code is null or parent_code <> code)
);

create table machine (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  class_id uuid not null,
  code text not null,
  maker text,
  model text,
  serial text,
  in_service_on date,
  retired_on date,
  spindles integer not null default 3,
  severity text not null default 'normal' check (severity in ('light', 'normal', 'severe')),
  condition text not null default 'working' check (condition in ('working', 'down', 'at-shop')),
  notes text not null default '',
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, code),
  check (spindles between 0 and 20)
);

create table hour_meter (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  fitted_on date,
  first_hours numeric(10,2) not null default 0,
  removed_on date,
  last_hours numeric(10,2),
  rollover_hours numeric(10,2), -- the figure at which it starts again from zero
  unique (shop_id, id),
  check (first_hours >= 0 and (last_hours is null or last_hours >= 0)),
  check (removed_on is null or fitted_on is null or removed_on >= fitted_on)
);

create table meter_change (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  changed_on date not null,
  old_hours numeric(10,2) not null,
  new_hours numeric(10,2) not null,
  origin text not null default 'told' check (origin in ('told', 'found')),
  unique (shop_id, id),
  unique (machine_id, changed_on),
  check (old_hours >= 0 and new_hours >= 0)
);

create table reading (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  read_at timestamptz(3) not null,
  hours numeric(10,2) not null,
  source text not null check (source in ('technician', 'supervisor', 'telematics', 'manager')),
  status text not null default 'accepted' check (status in ('accepted', 'set-aside')),
  reason_code text,
  reason text,
  suggested_hours numeric(10,2),
  decided_by uuid,
  decided_at timestamptz(3),
  recorded_at timestamptz(3) not null default now(),
  version integer not null default 1,
  unique (shop_id, id),
  unique (machine_id, read_at, source, hours),
  check (hours >= 0 and hours < 1000000),
  check ((status = 'set-aside') = (reason is not null))
);

-- Components

create table part (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  code text not null,
  description text not null,
  designation text,
  unit text not null default 'each',
  unit_price_cents integer not null default 0,
  unit_cost_cents integer not null default 0,
  lead_days integer not null default 0,
  version integer not null default 1,
  unique (shop_id, id),
  unique (shop_id, code),
  check (unit_price_cents >= 0 and unit_cost_cents >= 0 and lead_days between 0 and 365)
);

create table stock (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  part_id uuid not null,
  technician_id uuid, -- null: the shop's shelf; else that technician's van
  on_hand numeric(12,3) not null default 0,
  unique (shop_id, id),
  unique nulls not distinct (part_id, technician_id),
  check (on_hand >= 0)
);

create table part_order (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  part_id uuid not null,
  quantity numeric(12,3) not null,
  ordered_on date not null,
  expected_on date not null,
  received_on date,
  version integer not null default 1,
  unique (shop_id, id),
  check (quantity > 0)
);

create table component_slot (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  name text not null,
  kind text not null,
  unique (shop_id, id),
  unique (machine_id, name)
);

create table component_life (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  slot_id uuid not null,
  part_id uuid,
  fitted_on date,
  fitted_hours numeric(10,2),
  removed_on date,
  removed_hours numeric(10,2),
  removal_reason text check (removal_reason in ('failed', 'preventive', 'upgrade', 'machine-retired')),
  note text not null default '',
  unique (shop_id, id),
  check (removed_on is null or fitted_on is null or removed_on >= fitted_on),
  check ((removed_on is null) = (removal_reason is null))
);

-- What is due: catalogue, history, forecasts

create table service_plan (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  class_id uuid not null,
  name text not null,
  version integer not null default 1,
  unique (shop_id, id),
  unique (class_id, name)
);

create table service_item (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  plan_id uuid not null,
  code text not null,
  title text not null,
  scope text not null default 'machine' check (scope in ('machine', 'spindle')),
  interval_hours numeric(10,2),
  interval_days integer,
  first_hours numeric(10,2),
  season_event text check (season_event in ('before-first-cut', 'before-storage')),
  severe_factor double precision not null default 1,
  tolerance_hours numeric(10,2) not null default 0,
  tolerance_days integer not null default 0,
  anchor text not null default 'floating' check (anchor in ('floating', 'fixed')),
  minutes integer not null,
  minutes_per_spindle integer not null default 0,
  skill text,
  must_do boolean not null default false, -- overdue work that is never left out for money
  preparations text[] not null default '{}',
  reset_by text[] not null default '{}',
  consumables jsonb not null default '[]',
  steps jsonb not null default '[]',
  torques jsonb not null default '[]',
  cautions text[] not null default '{}',
  failure_cents integer not null default 0,
  hazard_shape double precision not null default 1.5,
  late_penalty_cents_per_day integer not null default 0,
  sources jsonb not null default '{}',
  active boolean not null default true,
  version integer not null default 1,
  unique (shop_id, id),
  unique (plan_id, code),
  check (interval_hours is not null or interval_days is not null or first_hours is not null or season_event is not null),
  check (coalesce(interval_hours, 1) > 0 and coalesce(interval_days, 1) > 0 and coalesce(first_hours, 1) > 0),
  check (severe_factor > 0 and severe_factor <= 1 and hazard_shape between 1 and 6),
  check (minutes between 0 and 960 and minutes_per_spindle between 0 and 240 and failure_cents >= 0)
);

create table service_item_part (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  item_id uuid not null,
  part_id uuid not null,
  quantity numeric(12,3) not null,
  per_spindle boolean not null default false,
  unique (shop_id, id),
  unique (item_id, part_id),
  check (quantity > 0)
);

create table machine_item_override (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  item_id uuid not null,
  disabled boolean not null default false,
  interval_hours numeric(10,2),
  interval_days integer,
  minutes integer,
  note text not null default '',
  version integer not null default 1,
  unique (shop_id, id),
  unique (machine_id, item_id)
);

create table completion (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  item_code text not null,
  slot_id uuid,
  done_on date not null,
  meter_hours numeric(10,2),
  outcome text not null default 'done' check (outcome in ('done', 'failed')),
  part_id uuid,
  visit_id uuid,
  recorded_by uuid,
  note text not null default '',
  recorded_at timestamptz(3) not null default now(),
  unique (shop_id, id),
  unique nulls not distinct (machine_id, item_code, slot_id, done_on),
  check (meter_hours is null or meter_hours >= 0)
);

create table forecast_run (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  status text not null default 'asked' check (status in ('asked', 'running', 'done', 'failed', 'cancelled')),
  as_of date not null,
  cost_from date not null,
  cost_days integer not null,
  asked_by uuid,
  asked_at timestamptz(3) not null default now(),
  started_at timestamptz(3),
  finished_at timestamptz(3),
  lease_until timestamptz(3),
  lease_holder text,
  attempts integer not null default 0,
  snapshot_hash text,
  result jsonb,
  error text,
  unique (shop_id, id)
);

create table usage_forecast (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  as_of date not null,
  lifetime_hours_now double precision not null,
  hours_per_week double precision not null,
  p10 double precision[] not null default '{}',
  p25 double precision[] not null default '{}',
  p50 double precision[] not null default '{}',
  p75 double precision[] not null default '{}',
  p90 double precision[] not null default '{}',
  unique (shop_id, id),
  unique (machine_id)
);

create table due_forecast (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  run_id uuid not null,
  machine_id uuid not null,
  service_item_id uuid,
  stopgap_id uuid,
  code text not null,
  slot text,
  title text not null,
  p10 date,
  p50 date,
  p90 date,
  cost_from date not null,
  probability_overdue double precision[] not null default '{}',
  timing_cost_cents integer[] not null default '{}',
  deferral_cents integer not null,
  why jsonb not null,
  unique (shop_id, id),
  unique nulls not distinct (machine_id, code, slot, stopgap_id),
  check ((service_item_id is null) <> (stopgap_id is null))
);

-- The week

create table plan_run (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  status text not null default 'asked' check (status in ('asked', 'running', 'done', 'failed', 'cancelled')),
  week_of date not null,
  days integer not null default 7,
  seed integer not null default 1,
  seconds integer not null,
  iterations integer,
  cancel_asked boolean not null default false,
  asked_by uuid,
  asked_at timestamptz(3) not null default now(),
  started_at timestamptz(3),
  finished_at timestamptz(3),
  lease_until timestamptz(3),
  lease_holder text,
  attempts integer not null default 0,
  snapshot jsonb,
  snapshot_hash text,
  progress jsonb,
  plan jsonb,
  total_cents integer,
  error text,
  version integer not null default 1,
  unique (shop_id, id),
  check (days between 1 and 28 and seconds between 1 and 3600)
);

create table visit (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  site_id uuid not null,
  technician_id uuid not null,
  plan_run_id uuid,
  visit_date date not null,
  state text not null default 'proposed' check (state in ('proposed', 'confirmed', 'done', 'cancelled')),
  drive_minutes integer not null,
  arrive_at timestamptz(3) not null,
  start_at timestamptz(3) not null,
  end_at timestamptz(3) not null,
  setup_minutes integer not null,
  preparation_minutes integer not null,
  promised_from timestamptz(3),
  promised_to timestamptz(3),
  move_cents integer not null default 0,
  marginal_cents integer not null,
  reason text not null,
  finished_at timestamptz(3),
  version integer not null default 1,
  unique (shop_id, id),
  check (arrive_at <= start_at and start_at <= end_at),
  check ((promised_from is null) = (promised_to is null))
);

create table visit_item (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  visit_id uuid not null,
  machine_id uuid not null,
  service_item_id uuid,
  stopgap_id uuid,
  slot text,
  code text not null,
  title text not null,
  role text not null check (role in ('must-do', 'anchor', 'rider', 'found')),
  minutes integer not null,
  shared_minutes integer not null default 0,
  timing_cents integer not null default 0,
  waiting_cents integer not null default 0,
  reason text not null,
  state text not null default 'planned' check (state in ('planned', 'done', 'skipped')),
  unique (shop_id, id),
  unique nulls not distinct (visit_id, machine_id, code, slot, stopgap_id)
);

create table day_route (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  plan_run_id uuid not null,
  technician_id uuid not null,
  route_date date not null,
  leave_at timestamptz(3) not null,
  return_at timestamptz(3) not null,
  lunch_from timestamptz(3),
  lunch_to timestamptz(3),
  drive_minutes integer not null,
  drive_metres integer not null,
  work_minutes integer not null,
  wait_minutes integer not null,
  overtime_minutes integer not null,
  load jsonb not null,
  unique (shop_id, id),
  unique (plan_run_id, technician_id, route_date)
);

create table finding (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  visit_id uuid,
  item_code text not null,
  slot text,
  found_on date not null,
  observation text not null,
  measures jsonb not null default '{}',
  interval_factor double precision,
  due_within_hours numeric(10,2),
  due_within_days integer,
  recorded_by uuid,
  recorded_at timestamptz(3) not null default now(),
  unique (shop_id, id),
  check (interval_factor is null or interval_factor between 0 and 1)
);

-- a temporary repair; the follow-up it owes comes back as work that must be done
create table stopgap (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  visit_id uuid,
  code text not null,
  description text not null,
  made_on date not null,
  limit_hours numeric(10,2),
  limit_on date,
  part_id uuid,
  part_quantity numeric(12,3) not null default 1,
  part_expected_on date,
  minutes integer not null,
  skill text,
  preparations text[] not null default '{}',
  failure_cents integer not null,
  closed_on date,
  recorded_by uuid,
  recorded_at timestamptz(3) not null default now(),
  version integer not null default 1,
  unique (shop_id, id),
  check (limit_hours is not null or limit_on is not null),
  check (minutes between 1 and 960 and failure_cents >= 0)
);

create table follow_up (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  stopgap_id uuid,
  finding_id uuid,
  owed text not null,
  due_on date,
  visit_id uuid,
  closed_on date,
  version integer not null default 1,
  unique (shop_id, id),
  check ((stopgap_id is null) <> (finding_id is null))
);

create table road_call (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  machine_id uuid not null,
  called_at timestamptz(3) not null,
  symptom text not null,
  when_it_happens text not null default '',
  tried text not null default '',
  usable boolean not null default false,
  state text not null default 'open' check (state in ('open', 'planned', 'closed')),
  visit_id uuid,
  version integer not null default 1,
  unique (shop_id, id)
);

create table service_agreement (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  customer_id uuid not null,
  name text not null,
  starts_on date not null,
  ends_on date,
  response_hours integer,
  version integer not null default 1,
  unique (shop_id, id),
  check (ends_on is null or ends_on >= starts_on)
);

create table service_agreement_item (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  agreement_id uuid not null,
  item_code text not null,
  included boolean not null default true,
  yearly_allowance integer,
  unique (shop_id, id),
  unique (agreement_id, item_code)
);

create table register_import (
  id uuid primary key default gen_random_uuid(),
  shop_id uuid not null references shop (id) on delete cascade,
  folder_hash text not null,
  counts jsonb not null,
  imported_by uuid,
  imported_at timestamptz(3) not null default now(),
  unique (shop_id, id)
);

-- References, each within one shop

alter table session add foreign key (shop_id, person_id) references person (shop_id, id) on delete cascade;
alter table integration_key add foreign key (shop_id, created_by) references person (shop_id, id) on delete restrict;
alter table technician add foreign key (shop_id, person_id) references person (shop_id, id) on delete restrict;
alter table technician_skill add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete cascade;
alter table technician_shift add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete cascade;
alter table technician_absence add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete cascade;
alter table site add foreign key (shop_id, customer_id) references customer (shop_id, id) on delete restrict;
alter table site add foreign key (shop_id, preferred_technician_id) references technician (shop_id, id) on delete restrict;
alter table site_access_window add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
alter table site_blackout add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
alter table person_site add foreign key (shop_id, person_id) references person (shop_id, id) on delete cascade;
alter table person_site add foreign key (shop_id, site_id) references site (shop_id, id) on delete cascade;
alter table preparation_state add foreign key (shop_id, class_id) references machine_class (shop_id, id) on delete cascade;
alter table machine add foreign key (shop_id, site_id) references site (shop_id, id) on delete restrict;
alter table machine add foreign key (shop_id, class_id) references machine_class (shop_id, id) on delete restrict;
alter table hour_meter add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table meter_change add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table reading add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table reading add foreign key (shop_id, decided_by) references person (shop_id, id) on delete restrict;
alter table stock add foreign key (shop_id, part_id) references part (shop_id, id) on delete cascade;
alter table stock add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete restrict;
alter table part_order add foreign key (shop_id, part_id) references part (shop_id, id) on delete restrict;
alter table component_slot add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table component_life add foreign key (shop_id, slot_id) references component_slot (shop_id, id) on delete cascade;
alter table component_life add foreign key (shop_id, part_id) references part (shop_id, id) on delete restrict;
alter table service_plan add foreign key (shop_id, class_id) references machine_class (shop_id, id) on delete cascade;
alter table service_item add foreign key (shop_id, plan_id) references service_plan (shop_id, id) on delete cascade;
alter table service_item_part add foreign key (shop_id, item_id) references service_item (shop_id, id) on delete cascade;
alter table service_item_part add foreign key (shop_id, part_id) references part (shop_id, id) on delete restrict;
alter table machine_item_override add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table machine_item_override add foreign key (shop_id, item_id) references service_item (shop_id, id) on delete cascade;
alter table completion add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table completion add foreign key (shop_id, slot_id) references component_slot (shop_id, id) on delete restrict;
alter table completion add foreign key (shop_id, part_id) references part (shop_id, id) on delete restrict;
alter table completion add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table completion add foreign key (shop_id, recorded_by) references person (shop_id, id) on delete restrict;
alter table forecast_run add foreign key (shop_id, asked_by) references person (shop_id, id) on delete restrict;
alter table usage_forecast add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table due_forecast add foreign key (shop_id, run_id) references forecast_run (shop_id, id) on delete cascade;
alter table due_forecast add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table due_forecast add foreign key (shop_id, service_item_id) references service_item (shop_id, id) on delete cascade;
alter table due_forecast add foreign key (shop_id, stopgap_id) references stopgap (shop_id, id) on delete cascade;
alter table plan_run add foreign key (shop_id, asked_by) references person (shop_id, id) on delete restrict;
alter table visit add foreign key (shop_id, site_id) references site (shop_id, id) on delete restrict;
alter table visit add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete restrict;
alter table visit add foreign key (shop_id, plan_run_id) references plan_run (shop_id, id) on delete restrict;
alter table visit_item add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete cascade;
alter table visit_item add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete restrict;
alter table visit_item add foreign key (shop_id, service_item_id) references service_item (shop_id, id) on delete restrict;
alter table visit_item add foreign key (shop_id, stopgap_id) references stopgap (shop_id, id) on delete restrict;
alter table day_route add foreign key (shop_id, plan_run_id) references plan_run (shop_id, id) on delete cascade;
alter table day_route add foreign key (shop_id, technician_id) references technician (shop_id, id) on delete restrict;
alter table finding add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table finding add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table finding add foreign key (shop_id, recorded_by) references person (shop_id, id) on delete restrict;
alter table stopgap add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table stopgap add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table stopgap add foreign key (shop_id, part_id) references part (shop_id, id) on delete restrict;
alter table stopgap add foreign key (shop_id, recorded_by) references person (shop_id, id) on delete restrict;
alter table follow_up add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table follow_up add foreign key (shop_id, stopgap_id) references stopgap (shop_id, id) on delete cascade;
alter table follow_up add foreign key (shop_id, finding_id) references finding (shop_id, id) on delete cascade;
alter table follow_up add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table road_call add foreign key (shop_id, machine_id) references machine (shop_id, id) on delete cascade;
alter table road_call add foreign key (shop_id, visit_id) references visit (shop_id, id) on delete restrict;
alter table service_agreement add foreign key (shop_id, customer_id) references customer (shop_id, id) on delete cascade;
alter table service_agreement_item add foreign key (shop_id, agreement_id) references service_agreement (shop_id, id) on delete cascade;
alter table register_import add foreign key (shop_id, imported_by) references person (shop_id, id) on delete restrict;

-- Ways the service looks things up

create index on session (person_id);
create index on integration_key (created_by);
create index on technician (person_id);
create index on technician_absence (technician_id);
create index on site (customer_id);
create index on site (preferred_technician_id);
create index on person_site (site_id);
create index on machine (site_id);
create index on machine (class_id);
create index on hour_meter (machine_id);
create index on reading (decided_by);
create index on stock (technician_id);
create index on part_order (part_id);
create index on component_life (slot_id);
create index on component_life (part_id);
create index on service_item_part (part_id);
create index on machine_item_override (item_id);
create index on completion (slot_id);
create index on completion (part_id);
create index on completion (visit_id);
create index on completion (recorded_by);
create index on forecast_run (asked_by);
create index on due_forecast (run_id);
create index on due_forecast (service_item_id);
create index on due_forecast (stopgap_id);
create index on plan_run (asked_by);
create index on visit (site_id);
create index on visit (technician_id);
create index on visit (plan_run_id);
create index on visit_item (machine_id);
create index on visit_item (service_item_id);
create index on visit_item (stopgap_id);
create index on day_route (technician_id);
create index on finding (machine_id);
create index on finding (visit_id);
create index on finding (recorded_by);
create index on stopgap (machine_id);
create index on stopgap (visit_id);
create index on stopgap (part_id);
create index on stopgap (recorded_by);
create index on follow_up (machine_id);
create index on follow_up (stopgap_id);
create index on follow_up (finding_id);
create index on follow_up (visit_id);
create index on road_call (machine_id);
create index on road_call (visit_id);
create index on service_agreement (customer_id);
create index on register_import (imported_by);
create index on reading (machine_id, read_at);
create index on completion (machine_id, item_code, done_on);
create index on due_forecast (shop_id, p50);
create index on visit (shop_id, visit_date);
create index on plan_run (shop_id, asked_at);
create index on plan_run (status) where status in ('asked', 'running');
create index on forecast_run (status) where status in ('asked', 'running');
-- One part at a time in a slot
create unique index on component_life (slot_id) where removed_on is null;
