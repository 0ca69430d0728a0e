-- The limit of a stopgap can be set anew: its hours count from that day.

alter table stopgap
  add column renewed_on date,
  add check (renewed_on >= made_on);

-- What was done with a machine is told with it: the trail is asked by machine, or by what was acted on.

alter table audit_entry add column machine_id uuid;
update audit_entry set machine_id = (detail ->> 'machineId')::uuid where detail ->> 'machineId' ~ '^[0-9a-f-]{36}$';
create index on audit_entry (machine_id, at);
create index on audit_entry (subject_id, at);
