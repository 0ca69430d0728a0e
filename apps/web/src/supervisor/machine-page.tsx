import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useRef, useState } from 'react';
import { describeFailure } from '../app/failed.js';
import { api } from '../data/api.js';
import { doubtAbout } from '../data/plausible-hours.js';
import { readingsQuery } from '../data/queries.js';
import type { Machine } from '../data/types.js';
import { HoursDoubtNote } from '../design/hours-doubt.js';
import { Keypad } from '../design/keypad.js';
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
  const { t, day, range } = words;
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
              {item.p50 ? <span className="pencil"> {t('grounds.due', { day: day(item.p50) })}</span> : null}
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
      <EnterHours machine={machine} />
      <TroubleForm machine={machine} />
      <History machineId={machine.id} />
    </div>
  );
}

function EnterHours({ machine }: { readonly machine: Machine }) {
  const { t, hours, moment } = useWords();
  const client = useQueryClient();
  const readings = useQuery(readingsQuery(machine.id)).data;
  const last = readings?.findLast((reading) => reading.status === 'accepted') ?? null;
  const [typed, setTyped] = useState('');
  const key = useRef(crypto.randomUUID());
  const doubt = typed === '' ? null : doubtAbout(typed, last, new Date());
  const save = useMutation({
    mutationFn: () =>
      api.post(
        '/v1/readings',
        { readings: [{ machineId: machine.id, readAt: new Date().toISOString(), hours: typed }] },
        key.current,
      ),
    onSuccess: async () => {
      key.current = crypto.randomUUID();
      setTyped('');
      await client.invalidateQueries({ queryKey: ['readings'] });
    },
    onError: () => {
      key.current = crypto.randomUUID();
    },
  });
  return (
    <section className="stack">
      <h2>{t('hours.title')}</h2>
      <p className="pencil">
        {last ? t('hours.last', { hours: hours(last.hours), when: moment(last.readAt) }) : t('hours.none')}
      </p>
      <Keypad value={typed} label={t('hours.title')} onChange={setTyped} />
      <HoursDoubtNote doubt={doubt} onTake={setTyped} />
      {save.isSuccess && typed === '' ? <p role="status">{t('hours.saved')}</p> : null}
      {save.error ? (
        <p className="note clay" role="alert">
          {describeFailure(save.error, t)}
        </p>
      ) : null}
      <button
        type="button"
        className="press"
        disabled={typed === '' || doubt?.kind === 'not-a-figure' || save.isPending}
        onClick={() => save.mutate()}
      >
        {t(doubt === null ? 'hours.save' : 'hours.save-anyway')}
      </button>
    </section>
  );
}
