import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { queryOf } from '../data/api.js';
import type { FieldDay, FieldVisit } from '../data/types.js';
import { FileButton } from '../design/file-button.js';
import { outbox, useKeptOf } from '../offline/outbox.js';
import { useWords } from '../words/words.js';
import { useFieldDay, visitOf } from './field-day.js';
import { geoAddress } from './geo-address.js';
import { SentBar } from './sent-bar.js';
import style from './technician.module.css';
import { startWork, stopWork, useWorkClock } from './work-clock.js';

/** At a site: the gate, the machines, the time, and the finish. */
export function VisitPage() {
  const { date, visitId } = useParams({ from: '/inside/day/$date/$visitId' });
  const { day, error } = useFieldDay(date);
  const { t, range, language } = useWords();
  const kept = useKeptOf(visitId);
  if (error) throw error;
  if (!day) return <h1>{t('wait')}</h1>;
  const visit = visitOf(day, visitId);
  if (!visit) return <GoneVisit date={date} />;
  const isFinished = visit.state === 'done' || kept.some((record) => record.fact.kind === 'visit-finish');
  return (
    <div className={style.page}>
      <title>{t('at.page', { site: visit.site.name })}</title>
      <Link to="/day/$date" params={{ date }} className="press-plain">
        {t('at.back-day')}
      </Link>
      <div className="tight">
        <h1 className={style.answer}>{visit.site.name}</h1>
        <p className="figure">{range(visit.startAt, visit.endAt)}</p>
      </div>
      {visit.site.gateNotes ? <p className="note">{t('at.gate', { notes: visit.site.gateNotes })}</p> : null}
      {visit.site.cautions ? <p className="note clay">{visit.site.cautions}</p> : null}
      <a className="press-quiet" href={geoAddress(visit.site)}>
        {t('day.navigate')}
      </a>
      <FileButton path={`/v1/visits/${visit.id}/visit-sheet.pdf${queryOf({ language })}`}>
        {t('print.visit-sheet')}
      </FileButton>
      <WorkClock visit={visit} isFinished={isFinished} />
      <MachineList day={day} visit={visit} kept={kept} />
      {isFinished ? (
        <p className="note" role="status">
          {t('at.finished')}
        </p>
      ) : (
        <Finish visit={visit} />
      )}
      <SentBar />
    </div>
  );
}

export function GoneVisit({ date }: { readonly date: string }) {
  const { t } = useWords();
  return (
    <div className={style.page}>
      <h1 className={style.answer}>{t('at.gone')}</h1>
      <p>{t('at.gone-what')}</p>
      <Link to="/day/$date" params={{ date }} className="press-quiet">
        {t('at.back-day')}
      </Link>
      <SentBar />
    </div>
  );
}

function MachineList({
  day,
  visit,
  kept,
}: {
  readonly day: FieldDay;
  readonly visit: FieldVisit;
  readonly kept: ReturnType<typeof useKeptOf>;
}) {
  const { t, named } = useWords();
  const doneHere = new Set(kept.flatMap(({ fact }) => (fact.kind === 'item-done' ? [fact.itemId] : [])));
  return (
    <section className="tight">
      <h2>{t('at.machines')}</h2>
      <ul className={style.stops}>
        {visit.machines.map((machine) => {
          const done = machine.items.filter((item) => item.state === 'done' || doneHere.has(item.id)).length;
          return (
            <li key={machine.id} data-done={done === machine.items.length}>
              <Link
                to="/day/$date/$visitId/$machineId"
                params={{ date: day.date, visitId: visit.id, machineId: machine.id }}
                className={style.open}
              >
                <span>
                  <strong>{machine.code}</strong>{' '}
                  <span className="pencil">{named(`class.${machine.machineClass}`, machine.machineClass)}</span>
                </span>
                <span className="pencil">{t('at.done-of', { done, all: machine.items.length })}</span>
                {machine.items.some((item) => item.isElsewhere) ? <span>✕ {t('at.elsewhere')}</span> : null}
              </Link>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** Start and stop; the span is recorded when it is stopped. Once finished, none begins. */
function WorkClock({ visit, isFinished }: { readonly visit: FieldVisit; readonly isFinished: boolean }) {
  const { t, time } = useWords();
  const startedAt = useWorkClock(visit.id);
  if (startedAt === null && isFinished) return null;
  return startedAt === null ? (
    <button type="button" className="press" onClick={() => startWork(visit.id)}>
      {t('at.start')}
    </button>
  ) : (
    <button
      type="button"
      className="press"
      onClick={() => void stopWork(visit.id, t('kept.work-time', { site: visit.site.name }))}
    >
      {t('at.stop', { time: time(startedAt) })}
    </button>
  );
}

function Finish({ visit }: { readonly visit: FieldVisit }) {
  const { t } = useWords();
  const [name, setName] = useState('');
  const site = visit.site.name;
  const finish = async () => {
    // before the finish, which makes late whatever follows it
    await stopWork(visit.id, t('kept.work-time', { site }));
    await outbox.record(
      { visitId: visit.id, machineId: null, about: t('kept.visit-finish', { site }) },
      { kind: 'visit-finish', signedBy: name.trim() },
    );
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void finish();
      }}
    >
      <h2>{t('at.finish')}</h2>
      <p className="pencil">{t('at.finish-what')}</p>
      <label className="field">
        <span className="label">{t('at.signed-by')}</span>
        <input value={name} maxLength={200} autoComplete="off" onChange={(event) => setName(event.target.value)} />
      </label>
      <button type="submit" className="press" disabled={name.trim() === ''}>
        {t('at.finish-go')}
      </button>
    </form>
  );
}
