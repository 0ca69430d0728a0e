-- How many requests a minute a key may send; null = as the service is set.
alter table integration_key add column requests_per_minute integer check (requests_per_minute > 0);
