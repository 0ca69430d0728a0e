import { useQuery, useSuspenseQuery } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { useMachinesInUse } from '../../data/machines-in-use.js';
import { machinesQuery, roadCallsQuery, shopQuery, sitesQuery } from '../../data/queries.js';
import { useWords } from '../../words/words.js';
import { CallForm } from './call-form.js';
import { CallOptions } from './call-options.js';
import style from './road-call.module.css';

/** A machine is down and somebody calls: take it down, see the best ways to fit it in, choose one. */
export function RoadCallPage() {
  const { t, moment } = useWords();
  const { data, error } = useQuery(roadCallsQuery);
  const shop = useSuspenseQuery(shopQuery).data;
  const machines = useQuery(machinesQuery).data;
  const inUse = useMachinesInUse();
  const sites = useQuery(sitesQuery).data;
  const [chosen, setChosen] = useState<string | null>(null);
  // On a phone the ways stand above the form that a call was just taken down in.
  const ways = useRef<HTMLElement>(null);
  useEffect(() => {
    if (chosen !== null) ways.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  if (error) throw error;
  if (!data || !machines || !inUse || !sites) return <h1>{t('wait')}</h1>;
  const open = data.filter((call) => call.state === 'open').toSorted((a, b) => (a.calledAt < b.calledAt ? 1 : -1));
  const call = data.find((each) => each.id === chosen);
  const nameOf = (machineId: string) => {
    const machine = machines.find((each) => each.id === machineId);
    const site = sites.find((each) => each.id === machine?.siteId);
    return t('call.machine', { code: machine?.code ?? t('unknown'), site: site?.name ?? '' });
  };
  return (
    <div className={style.page}>
      <title>{t('call.page')}</title>
      <h1>{t('call.sentence', { n: open.length })}</h1>
      <div className={style.two}>
        {open.length > 0 ? (
          <ul className={style.calls}>
            {open.map((each) => (
              <li key={each.id}>
                <button type="button" aria-pressed={each.id === chosen} onClick={() => setChosen(each.id)}>
                  <strong>{nameOf(each.machineId)}</strong>
                  <span>{each.symptom}</span>
                  <span className="small pencil">
                    {moment(each.calledAt)} · {t(each.usable ? 'call.usable' : 'state.down')}
                  </span>
                </button>
              </li>
            ))}
          </ul>
        ) : null}
        <section ref={ways} className={style.ways}>
          {call ? (
            <CallOptions key={call.id} call={call} name={nameOf(call.machineId)} today={shop.today} />
          ) : (
            <p className="note">{t('call.choose')}</p>
          )}
        </section>
        <section className="stack">
          <h2>{t('call.new')}</h2>
          <CallForm machines={inUse} sites={sites} onTaken={setChosen} />
        </section>
      </div>
    </div>
  );
}
