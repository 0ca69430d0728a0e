import { useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { api } from '../data/api.js';
import { readingsQuery } from '../data/queries.js';
import type { Machine } from '../data/types.js';
import { EnterHours } from '../design/enter-hours.js';
import { StateOfMachine } from '../design/state-shape.js';
import { useWords } from '../words/words.js';
import style from './grounds.module.css';
import { History } from './history.js';
import { stopgapEnd } from './machine-states.js';
import { TroubleForm } from './trouble-form.js';
import { useGrounds } from './use-grounds.js';

/** One machine: can it mow, its hours, trouble, what was done and what is owed. */
export function GroundsMachinePage() {
  const { machineId } = useParams({ from: '/inside/grounds/$machineId' });
  const words = useWords();
  const { t, day, dayBeside, range } = words;
  const grounds = useGrounds();
  if (!grounds) return <h1>{t('wait')}</h1>;
  const found = grounds.machines.find(({ machine }) => machine.id === machineId);
  if (!found) return <h1>{t('not-found.title')}</h1>;
  const { machine, state, due, isReady } = found;
  const end = stopgapEnd(due);
  const isAway = state === 'down' || state === 'in-our-hands';
  const verdict = isAway ? 'grounds.cannot' : isReady ? 'grounds.can' : 'grounds.runs-out';
  const next = grounds.nextVisitOf(machine.siteId);
  return (
    <div className={style.page} key={machineId}>
      <title>{t('at.page', { site: machine.code })}</title>
      <Link to="/grounds" className="press-plain">
        {t('grounds.back')}
      </Link>
      <h1>
        {t(verdict, {
          machine: machine.code,
          day: day(grounds.saturday),
          end: end === null ? '' : day(end),
        })}
      </h1>
      <StateOfMachine state={state} />
      {due.length > 0 ? (
        <ul>
          {due.map((item) => (
            <li key={item.id}>
              {words.work(item)}
              {item.p50 ? (
                <span className="pencil"> {t('grounds.due', { day: dayBeside(item.p50, grounds.today) })}</span>
              ) : null}
            </li>
          ))}
        </ul>
      ) : null}
      {next ? (
        <p>
          {t('grounds.next', {
            day: day(next.date),
            slot: range(next.promisedFrom ?? next.startAt, next.promisedTo ?? next.endAt),
          })}
        </p>
      ) : null}
      <Hours machine={machine} />
      <TroubleForm machine={machine} />
      <History machineId={machine.id} />
    </div>
  );
}

function Hours({ machine }: { readonly machine: Machine }) {
  const client = useQueryClient();
  const readings = useQuery(readingsQuery(machine.id)).data;
  const last = readings?.findLast((reading) => reading.status === 'accepted') ?? null;
  return (
    <EnterHours
      last={last}
      save={async (reading, key) => {
        await api.post('/v1/readings', { readings: [{ machineId: machine.id, ...reading }] }, key);
        await client.invalidateQueries({ queryKey: ['readings'] });
      }}
    />
  );
}
