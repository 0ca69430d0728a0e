import { Link } from '@tanstack/react-router';
import { CalendarAddresses } from '../calendar/calendar-addresses.js';
import { SiteContacts } from '../contacts/site-contacts.js';
import { type MachineState, StateOfMachine } from '../design/state-shape.js';
import type { WordKey } from '../words/en.js';
import { useWords } from '../words/words.js';
import { BlockDays } from './block-days.js';
import { ComingVisits } from './coming-visits.js';
import { EndedWishes } from './ended-wishes.js';
import style from './grounds.module.css';
import { dayOfState } from './machine-states.js';
import { SiteEvents } from './site-events.js';
import { useGrounds } from './use-grounds.js';

/** How many can mow on Saturday, then those that cannot, then all by site. */
export function GroundsPage() {
  const { t, day, dayBeside, named } = useWords();
  const grounds = useGrounds();
  if (!grounds) return <h1>{t('wait')}</h1>;
  const { machines, sites, saturday, today } = grounds;
  const idle = machines.filter(({ isReady }) => !isReady);
  const since = (state: MachineState, on: string | null) =>
    on === null ? {} : { detail: t(`state.day.${state}` as WordKey, { day: dayBeside(on, today) }) };
  const line = ({ machine, state, due }: (typeof machines)[number]) => (
    <li key={machine.id}>
      <Link to="/grounds/$machineId" params={{ machineId: machine.id }} className={style.line}>
        <span>
          <strong>{machine.code}</strong>{' '}
          <span className="small pencil">{named(`class.${machine.machineClass}`, machine.machineClass)}</span>
        </span>
        <StateOfMachine state={state} {...since(state, dayOfState(state, due, today))} />
      </Link>
    </li>
  );
  return (
    <div className={style.page}>
      <title>{t('grounds.page')}</title>
      <h1>{t('grounds.title', { usable: machines.length - idle.length, all: machines.length, day: day(saturday) })}</h1>
      {idle.length > 0 ? (
        <section className="tight">
          <h2>{t('grounds.idle', { day: day(saturday) })}</h2>
          <ul className={style.list}>{idle.map(line)}</ul>
        </section>
      ) : null}
      {sites.map((site) => {
        const own = machines.filter(({ machine }) => machine.siteId === site.id);
        return (
          <section key={site.id} className="stack">
            <h2>{site.name}</h2>
            <ComingVisits visits={grounds.comingVisitsOf(site.id)} machines={own.map(({ machine }) => machine)} />
            <EndedWishes siteId={site.id} today={today} />
            <ul className={style.list}>{own.map(line)}</ul>
            <CalendarAddresses of={{ siteId: site.id }} />
            <SiteContacts siteId={site.id} />
          </section>
        );
      })}
      <BlockDays sites={sites} />
      <SiteEvents sites={sites} />
    </div>
  );
}
