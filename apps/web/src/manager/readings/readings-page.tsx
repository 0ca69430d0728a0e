import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { machinesQuery, setAsideQuery, sitesQuery } from '../../data/queries.js';
import { useWords } from '../../words/words.js';
import { DoubtfulReading } from './doubtful-reading.js';

const FIRST = 10;

/** Readings that were set aside and wait for a person: each with its neighbours and one press to decide. */
export function ReadingsPage() {
  const { t, number } = useWords();
  const { data, error } = useQuery(setAsideQuery);
  const machines = useQuery(machinesQuery).data;
  const sites = useQuery(sitesQuery).data;
  const [shown, setShown] = useState(FIRST);
  if (error) throw error;
  if (!data || !machines || !sites) return <h1>{t('wait')}</h1>;
  // The newest first: they move the forecasts most.
  const open = data.filter((each) => each.decidedAt === null).toSorted((a, b) => (a.readAt < b.readAt ? 1 : -1));
  const machineOf = new Map(machines.map((machine) => [machine.id, machine]));
  const siteOf = new Map(sites.map((site) => [site.id, site.name]));
  return (
    <div className="stack">
      <title>{t('readings.page')}</title>
      <h1>{t('readings.sentence', { n: open.length })}</h1>
      {open.length === 0 ? null : <p className="pencil">{t('readings.what')}</p>}
      {open.slice(0, shown).map((reading) => {
        const machine = machineOf.get(reading.machineId);
        return (
          <DoubtfulReading
            key={reading.id}
            reading={reading}
            code={machine?.code ?? t('unknown')}
            site={siteOf.get(machine?.siteId ?? '') ?? ''}
          />
        );
      })}
      {open.length > shown ? (
        <p>
          <button type="button" className="press-quiet" onClick={() => setShown(shown + FIRST)}>
            {t('left.more', { count: number(Math.min(FIRST, open.length - shown)) })}
          </button>
        </p>
      ) : null}
    </div>
  );
}
