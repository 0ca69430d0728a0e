import { useQuery } from '@tanstack/react-query';
import { useShop } from '../app/shop-words.js';
import { dueQuery, machinesQuery, sitesQuery, visitsQuery } from '../data/queries.js';
import type { DueItem, Machine } from '../data/types.js';
import { type MachineState, StateOfMachine } from '../design/state-shape.js';
import { addDays } from '../words/local-date.js';
import { useWords } from '../words/words.js';

const WINDOW_DAYS = 7;

/** Each machine of the own sites, its state in shape and word, and the next visit. */
export function GroundsPage() {
  const { t, day, range } = useWords();
  const shop = useShop();
  const from = shop?.forecastAsOf ?? shop?.today ?? '2000-01-01';
  const machines = useQuery(machinesQuery).data;
  const sites = useQuery(sitesQuery).data;
  const due = useQuery({ ...dueQuery({ until: addDays(from, WINDOW_DAYS) }), enabled: shop !== undefined }).data;
  const visits = useQuery({ ...visitsQuery(from), enabled: shop !== undefined }).data;
  if (!machines || !sites || !due || !visits) return <h1>{t('wait')}</h1>;
  const dueOf = Map.groupBy(due, (item) => item.machineId);
  const states = new Map(machines.map((machine) => [machine.id, stateOf(machine, dueOf.get(machine.id) ?? [])]));
  const usable = machines.filter((machine) => !['down', 'in-our-hands'].includes(states.get(machine.id)!)).length;
  return (
    <div className="stack" style={{ maxWidth: '44rem' }}>
      <title>{t('grounds.page')}</title>
      <h1>{t('grounds.title', { usable, all: machines.length })}</h1>
      {sites.map((site) => {
        const next = visits.find((visit) => visit.siteId === site.id && visit.state !== 'cancelled');
        return (
          <section key={site.id} className="tight">
            <h2>{site.name}</h2>
            {next ? (
              <p>
                {t('grounds.next', {
                  day: day(next.date),
                  slot: range(next.promisedFrom ?? next.startAt, next.promisedTo ?? next.endAt),
                })}
              </p>
            ) : null}
            <ul style={{ listStyle: 'none', padding: 0 }}>
              {machines
                .filter((machine) => machine.siteId === site.id)
                .map((machine) => (
                  <li key={machine.id} className="row">
                    <strong>{machine.code}</strong> <StateOfMachine state={states.get(machine.id)!} />
                  </li>
                ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}

/** The worst that is known of a machine. */
function stateOf(machine: Machine, due: readonly DueItem[]): MachineState {
  if (machine.condition === 'down') return 'down';
  if (machine.condition === 'at-shop') return 'in-our-hands';
  if (due.some((item) => item.kind === 'stopgap')) return 'stopgap';
  if (due.some((item) => (item.probabilityOverdue[0] ?? 0) >= 0.5)) return 'overdue';
  return due.length > 0 ? 'service-soon' : 'ready';
}
