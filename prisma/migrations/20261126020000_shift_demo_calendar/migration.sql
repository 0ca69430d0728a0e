-- An invented shop stays in its season: its calendar stands these days apart from the world's.
alter table shop add column clock_shift_days integer not null default 0;
