import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useShop } from '../../app/shop-words.js';
import { Refused } from '../../data/api.js';
import { lifetimeOf } from '../../data/lifetime.js';
import {
  dueQuery,
  machinesQuery,
  meterChangesQuery,
  readingsQuery,
  sitesQuery,
  usageQuery,
} from '../../data/queries.js';
import { useWords } from '../../words/words.js';
import { OpenStopgaps } from '../stopgaps/open-stopgaps.js';
import { Trail } from '../trail/trail.js';
import { HourMeters } from './hour-meters.js';
import { MachineWork } from './machine-work.js';
import { RecordedParts } from './recorded-parts.js';
import { RecordedWork } from './recorded-work.js';
import { SeasonShape } from './season-shape.js';
import { UsageChart } from './usage-chart.js';

/** One machine: how much it has run, how much it will, and what that means for its work. */
export function MachineForecastPage() {
  const { id } = useParams({ strict: false }) as { id: string };
  const words = useWords();
  const { t, hours, day, number } = words;
  const shop = useShop();
  const machine = useQuery(machinesQuery).data?.find((each) => each.id === id);
  const site = useQuery(sitesQuery).data?.find((each) => each.id === machine?.siteId);
  const usage = useQuery(usageQuery(id));
  const readings = useQuery(readingsQuery(id)).data;
  const changes = useQuery(meterChangesQuery(id)).data;
  const due = useQuery(dueQuery({ machineId: id })).data;
  const isUnknown = usage.error instanceof Refused && usage.error.code === 'not-found';
  if (usage.error && !isUnknown) throw usage.error;
  if (!shop || !machine || !readings || !changes || !due || (!usage.data && !isUnknown)) return <h1>{t('wait')}</h1>;
  const points = readings.map((reading) => ({
    at: reading.readAt,
    hours: lifetimeOf(reading.readAt, Number(reading.hours), changes),
    isAside: reading.status === 'set-aside',
  }));
  const marks = due
    .flatMap((item) => {
      const at = (item.why as { dueAtHours?: number | null } | null)?.dueAtHours;
      return at == null ? [] : [{ title: words.work(item), hours: at }];
    })
    .toSorted((a, b) => a.hours - b.hours);
  const last = (usage.data?.p50.length ?? 0) - 1;
  return (
    <div className="stack">
      <title>{t('forecast.page', { code: machine.code })}</title>
      <p className="row">
        <Link to="/register/$kind/$id" params={{ kind: 'machines', id }}>
          {t('forecast.machine', {
            code: machine.code,
            class: words.named(`class.${machine.machineClass}`, machine.machineClass),
          })}
        </Link>
        <span className="pencil">{[machine.maker, machine.model].filter(Boolean).join(' ')}</span>
        <span className="pencil">{site?.name}</span>
      </p>
      {usage.data ? (
        <>
          <h1>
            {t('forecast.sentence', {
              now: hours(usage.data.lifetimeHoursNow),
              pace: number(usage.data.hoursPerWeek, 1),
              day: day(usage.data.asOf),
              low: hours(usage.data.p10[last] ?? 0),
              high: hours(usage.data.p90[last] ?? 0),
              days: usage.data.p50.length,
            })}
          </h1>
          <UsageChart usage={usage.data} points={points} marks={marks} />
          <p className="pencil small">{t('forecast.legend')}</p>
          <SeasonShape usage={usage.data} points={points} />
        </>
      ) : (
        <h1>{t('forecast.none')}</h1>
      )}
      <OpenStopgaps machineId={id} today={shop.today} />
      <MachineWork due={due} today={shop.today} />
      <RecordedWork machineId={id} />
      <RecordedParts machineId={id} />
      <HourMeters machineId={id} changes={changes} today={shop.today} />
      <Trail of={{ machineId: id }} />
    </div>
  );
}
