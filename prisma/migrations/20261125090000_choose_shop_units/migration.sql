-- Whether the shop reads miles, ft-lb and °F, or kilometres, N·m and °C.
alter table shop add column units text not null default 'us' check (units in ('us', 'metric'));
