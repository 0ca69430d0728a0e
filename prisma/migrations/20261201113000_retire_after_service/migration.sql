-- A machine is retired after it came into service, or on that day. Where the two days are turned, the retirement is what
-- plans go by and stays; the other day is not known, and what was told of it is kept in the notes.

update machine
set notes = trim(both E'\n' from notes || E'\nIn service since ' || in_service_on || ', it was told, which is after it was retired.'),
  in_service_on = null,
  version = version + 1
where retired_on < in_service_on;

alter table machine add constraint machine_retired_after_service check (retired_on >= in_service_on);
