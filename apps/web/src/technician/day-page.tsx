import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { CalendarAddresses } from '../calendar/calendar-addresses.js';
import { queryOf } from '../data/api.js';
import { stored } from '../data/stored.js';
import type { FieldDay, FieldVisit } from '../data/types.js';
import { FileButton } from '../design/file-button.js';
import { useWords } from '../words/words.js';
import { dayChanges, useFieldDay } from './field-day.js';
import { geoAddress } from './geo-address.js';
import { SentBar } from './sent-bar.js';
import style from './technician.module.css';

/** The day as a vertical ruler: where next, when, how long the drive, what to bring in. */
export function DayPage() {
  const { date } = useParams({ strict: false }) as { date?: string };
  const { day: found, error } = useFieldDay(date);
  const { t, day, range, time } = useWords();
  if (error) throw error;
  if (!found) return <h1>{t('wait')}</h1>;
  const next = found.visits.find((visit) => visit.state !== 'done');
  return (
    <div className={style.page}>
      <title>{t('day.page')}</title>
      <div className="tight">
        <p className="pencil">{day(found.date)}</p>
        <h1 className={style.answer}>
          {next
            ? t('day.next', { site: next.site.name, slot: range(next.startAt, next.endAt) })
            : t(found.visits.length === 0 ? 'day.free' : 'day.over')}
        </h1>
      </div>
      <Changes />
      <LoadList found={found} />
      <ol className={style.stops}>
        {found.visits.map((visit) => (
          <Stop key={visit.id} date={found.date} visit={visit} />
        ))}
      </ol>
      {found.route ? <p className={style.drive}>{t('day.home', { time: time(found.route.returnAt) })}</p> : null}
      <nav aria-label={t('day.others')} className="row">
        {found.dates.map((each) => (
          <Link
            key={each}
            to="/day/$date"
            params={{ date: each }}
            className="press-plain"
            {...(each === found.date ? { 'aria-current': 'page' as const } : {})}
          >
            {day(each)}
          </Link>
        ))}
      </nav>
      <CalendarAddresses of={{ technicianId: found.technician.id }} />
      <SentBar />
    </div>
  );
}

function Stop({ date, visit }: { readonly date: string; readonly visit: FieldVisit }) {
  const { t, range, minutes } = useWords();
  const { site } = visit;
  return (
    <li data-done={visit.state === 'done'}>
      <p className={style.drive}>{t('day.drive', { time: minutes(visit.driveMinutes) })}</p>
      <Link to="/day/$date/$visitId" params={{ date, visitId: visit.id }} className={style.open}>
        <span className="figure">{range(visit.startAt, visit.endAt)}</span>
        <strong>{site.name}</strong>
        <span className="pencil">
          {t('day.machines', { n: visit.machines.length })}
          {visit.state === 'done' ? `, ${t('visit.done')}` : ''}
        </span>
      </Link>
      {visit.promisedFrom && visit.promisedTo ? (
        <p className="pencil">{t('week.promised', { slot: range(visit.promisedFrom, visit.promisedTo) })}</p>
      ) : null}
      <a className="press-quiet" href={geoAddress(site)}>
        {t('day.navigate')}
      </a>
    </li>
  );
}

/** What to put into the van, ticked off on this device. */
function LoadList({ found }: { readonly found: FieldDay }) {
  const { t, number, language, sentence } = useWords();
  const kept = stored<readonly string[]>(`deckround.load.${found.technician.id}.${found.date}`);
  const [ticked, setTicked] = useState<readonly string[]>(kept.read() ?? []);
  const load = found.route?.load ?? [];
  if (load.length === 0) return null;
  const toggle = (name: string) => {
    const next = ticked.includes(name) ? ticked.filter((each) => each !== name) : [...ticked, name];
    setTicked(next);
    kept.write(next);
  };
  return (
    <details>
      <summary>
        {t('load.title', { done: load.filter((line) => ticked.includes(line.name)).length, all: load.length })}
      </summary>
      <div>
        {load.map((line) => (
          <label key={line.name} className={style.tick}>
            <input type="checkbox" checked={ticked.includes(line.name)} onChange={() => toggle(line.name)} />
            <span>
              <span className="figure">
                {t('parts.amount', { n: number(line.quantity, 2), q: line.quantity, unit: line.unit })}
              </span>{' '}
              {sentence(line.name)}
              {line.missing > 0 ? <strong> {t('load.missing', { n: number(line.missing, 2) })}</strong> : null}
            </span>
          </label>
        ))}
        <FileButton path={`/v1/field-day/load-list.pdf${queryOf({ date: found.date, language })}`}>
          {t('print.load-list')}
        </FileButton>
      </div>
    </details>
  );
}

/** What the shop has planned otherwise meanwhile. */
function Changes() {
  const { t, day, time } = useWords();
  const [changes, setChanges] = useState(dayChanges.read() ?? []);
  if (changes.length === 0) return null;
  const seen = () => {
    dayChanges.clear();
    setChanges([]);
  };
  return (
    <div className="note straw stack" role="status">
      <p>{t('day.changed')}</p>
      <ul>
        {changes.map((change) => (
          <li key={`${change.what}${change.date}${change.site}${change.startAt}`}>
            {t(`day.changed.${change.what}`, { site: change.site, day: day(change.date), time: time(change.startAt) })}
          </li>
        ))}
      </ul>
      <button type="button" className="press-quiet" onClick={seen}>
        {t('day.changed.seen')}
      </button>
    </div>
  );
}
