import { queryOptions, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { everyPage } from '../../data/api.js';
import { useMachinesInUse } from '../../data/machines-in-use.js';
import { sitesQuery } from '../../data/queries.js';
import type { TelematicsSource, TelematicsUnit } from '../../data/types.js';
import { KeptSentence } from '../../design/kept-sentence.js';
import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';
import { sourcesQuery } from '../connections/queries.js';
import style from './heard-from.module.css';
import { MatchForm } from './match-form.js';

const unitsQuery = queryOptions({
  queryKey: ['telematics-units'],
  queryFn: ({ signal }) => everyPage<TelematicsUnit>('/v1/telematics/units', signal),
});

/** Which machines other systems tell of: those whose machine is not known first, each with one press to say it. */
export function HeardFromPage() {
  const { t } = useWords();
  const { data, error } = useQuery(unitsQuery);
  const machines = useMachinesInUse();
  const sites = useQuery(sitesQuery).data;
  const sources = useQuery(sourcesQuery).data ?? [];
  if (error) throw error;
  if (!data || !machines || !sites) return <h1>{t('wait')}</h1>;
  const open = data.filter((unit) => unit.machineId === null && unit.matchedBy === null);
  const known = data.filter((unit) => unit.machineId !== null);
  const aside = data.filter((unit) => unit.machineId === null && unit.matchedBy === 'hand');
  const form = (unit: TelematicsUnit) => <MatchForm key={unit.version} unit={unit} machines={machines} sites={sites} />;
  return (
    <div className="stack">
      <title>{t('heard.page')}</title>
      <h1>{t('heard.sentence', { open: open.length, n: data.length })}</h1>
      <p className="pencil">{t(data.length === 0 ? 'heard.none' : 'heard.what')}</p>
      {open.map((unit) => (
        <article key={unit.id} className={style.unit} aria-label={nameOf(unit)}>
          <UnitFacts unit={unit} />
          {form(unit)}
        </article>
      ))}
      {known.length > 0 ? (
        <details>
          <summary>{t('heard.known', { n: known.length })}</summary>
          <KnownUnits units={known} />
        </details>
      ) : null}
      {aside.length > 0 ? (
        <details>
          <summary>{t('heard.aside', { n: aside.length })}</summary>
          {aside.map((unit) => (
            <article key={unit.id} className={style.unit} aria-label={nameOf(unit)}>
              <UnitFacts unit={unit} />
              {form(unit)}
            </article>
          ))}
        </details>
      ) : null}
      {sources.length > 0 ? <Sources sources={sources} /> : null}
      <p>
        <Link to="/register/connections">{t('heard.connect')}</Link>
      </p>
    </div>
  );
}

/** What tells the machine from others, as its sender writes it. */
function nameOf({ serial, pin, equipmentId }: TelematicsUnit): string {
  return serial ?? pin ?? equipmentId ?? '';
}

function UnitFacts({ unit }: { readonly unit: TelematicsUnit }) {
  const { t, hours, moment, sentence } = useWords();
  const others = [
    [unit.maker, unit.model].filter(Boolean).join(' '),
    unit.equipmentId && unit.equipmentId !== nameOf(unit) ? t('heard.label', { label: unit.equipmentId }) : '',
    unit.pin && unit.pin !== nameOf(unit) ? t('heard.pin', { pin: unit.pin }) : '',
  ].filter(Boolean);
  return (
    <div className="tight">
      <h2 className="figure">{nameOf(unit)}</h2>
      {others.length > 0 ? <p className="pencil">{others.join(' · ')}</p> : null}
      <p>
        {unit.lastHours === null || unit.lastHoursAt === null
          ? t('heard.no-hours')
          : t('heard.hours', { hours: hours(unit.lastHours), when: moment(unit.lastHoursAt) })}
      </p>
      {unit.lastFault === null ? null : <p className="small pencil">{sentence(unit.lastFault)}</p>}
    </div>
  );
}

function KnownUnits({ units }: { readonly units: readonly TelematicsUnit[] }) {
  const { t, named, hours, moment } = useWords();
  return (
    <Scrolling label={t('heard.known', { n: units.length })}>
      <table>
        <thead>
          <tr>
            <th scope="col">{t('heard.machine')}</th>
            <th scope="col">{t('heard.heard-as')}</th>
            <th scope="col">{t('heard.known-by')}</th>
            <th scope="col">{t('heard.last')}</th>
          </tr>
        </thead>
        <tbody>
          {units.map((unit) => (
            <tr key={unit.id}>
              <th scope="row">
                <Link to="/machines/$id/forecast" params={{ id: unit.machineId! }}>
                  {unit.machineCode}
                </Link>
              </th>
              <td className="figure">{nameOf(unit)}</td>
              <td>{named(`heard.by.${unit.matchedBy}`, '')}</td>
              <td>
                {unit.lastHours === null || unit.lastHoursAt === null
                  ? t('heard.no-hours')
                  : t('heard.hours', { hours: hours(unit.lastHours), when: moment(unit.lastHoursAt) })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scrolling>
  );
}

/** The systems that are asked, and how the last look went. */
function Sources({ sources }: { readonly sources: readonly TelematicsSource[] }) {
  const { t, moment } = useWords();
  return (
    <section className="stack">
      <h2>{t('heard.sources')}</h2>
      <ul>
        {sources.map((source) => (
          <li key={source.id}>
            {source.name}:{' '}
            {source.lastPollAt === null ? t('heard.not-asked') : t('heard.asked', { when: moment(source.lastPollAt) })}
            {source.lastError === null ? null : (
              <span className="fault">
                {' '}
                <KeptSentence text={source.lastError} />
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
