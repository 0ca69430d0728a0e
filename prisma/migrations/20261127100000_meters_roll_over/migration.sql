-- Of a meter's stay on a machine only the rollover says what readings and meter changes do not: it belongs to the machine
-- now. What else stood there goes into the machine's notes, so that nothing is lost.
alter table machine add column meter_rollover_hours numeric(10,2) check (meter_rollover_hours > 0);

update machine set meter_rollover_hours = last.rollover_hours
from (
  select distinct on (machine_id) machine_id, rollover_hours from hour_meter
  where rollover_hours > 0 order by machine_id, fitted_on desc nulls last
) last
where last.machine_id = machine.id;

update machine set notes = concat_ws(E'\n', nullif(notes, ''), fitted.lines)
from (
  select machine_id, string_agg('Hour meter fitted on ' || fitted_on || ' at ' || first_hours || ' h.', E'\n' order by fitted_on) lines
  from hour_meter where fitted_on is not null group by machine_id
) fitted
where fitted.machine_id = machine.id;

drop table hour_meter;
