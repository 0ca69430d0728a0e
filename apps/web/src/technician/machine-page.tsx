import { Link, useParams } from '@tanstack/react-router';
import { outbox, useKeptOf } from '../offline/outbox.js';
import { stopgapLimit } from '../words/stopgap-limit.js';
import { useWords } from '../words/words.js';
import { Cautions } from './cautions.js';
import { useFieldDay, visitOf } from './field-day.js';
import { FindingForms } from './finding-forms.js';
import { FoundWorkForm } from './found-work-form.js';
import { PartForm } from './part-form.js';
import { PhotoTaker } from './photo-taker.js';
import { ReadingForm } from './reading-form.js';
import type { Recorder } from './recorder.js';
import { SentBar } from './sent-bar.js';
import { StopgapForm } from './stopgap-form.js';
import style from './technician.module.css';
import { GoneVisit } from './visit-page.js';
import { WorkItem } from './work-item.js';

/** One machine of a visit: cautions first, then the reading, the work, what was found. */
export function MachinePage() {
  const { date, visitId, machineId } = useParams({ from: '/inside/day/$date/$visitId/$machineId' });
  const { day, error } = useFieldDay(date);
  const words = useWords();
  const { t } = words;
  const kept = useKeptOf(visitId).filter((record) => record.machineId === machineId);
  if (error) throw error;
  if (!day) return <h1>{t('wait')}</h1>;
  const machine = visitOf(day, visitId)?.machines.find((each) => each.id === machineId);
  if (!machine) return <GoneVisit date={date} />;
  const subject = (about: string) => ({ visitId, machineId, about: `${machine.code}: ${about}` });
  const record: Recorder = (fact, about) => outbox.record(subject(about), fact);
  const isSeen = kept.some((each) => each.fact.kind === 'cautions-seen');
  const facts = kept.map((each) => each.fact);
  const reading = facts.findLast((fact) => fact.kind === 'reading');
  const meterHours = reading?.kind === 'reading' ? reading.hours : null;
  const doneHere = new Set(facts.flatMap((fact) => (fact.kind === 'item-done' ? [fact.itemId] : [])));
  return (
    <div className={style.page} key={machineId}>
      <title>{t('at.page', { site: machine.code })}</title>
      <Link to="/day/$date/$visitId" params={{ date, visitId }} className="press-plain">
        {t('at.back-site')}
      </Link>
      <div className="tight">
        <h1 className={style.answer}>{machine.code}</h1>
        <p className="pencil">
          {[words.named(`class.${machine.machineClass}`, machine.machineClass), machine.model, machine.serial]
            .filter(Boolean)
            .join(', ')}
        </p>
      </div>
      {machine.stopgaps.map((stopgap) => (
        <p key={stopgap.description} className="note straw">
          {t('at.stopgap', {
            what: stopgap.description,
            limit: stopgapLimit(stopgap, words, words.day),
          })}
        </p>
      ))}
      {machine.notes ? <p className="note">{machine.notes}</p> : null}
      <Cautions machine={machine} manualFirst={day.manualFirst} isSeen={isSeen} record={record} />
      <ReadingForm machine={machine} recorded={meterHours} record={record} />
      <section className="stack">
        <h2>{t('at.work')}</h2>
        {isSeen ? null : <p className="pencil">{t('at.cautions-first')}</p>}
        {machine.items.map((item) => (
          <WorkItem
            key={item.id}
            item={item}
            isOpen={isSeen}
            isDone={item.state === 'done' || doneHere.has(item.id)}
            meterHours={meterHours}
            kept={kept}
            record={record}
          />
        ))}
      </section>
      <PhotoTaker kept={kept} onPhoto={(blob) => outbox.addPhoto(subject(t('kept.photo')), blob)} />
      <section>
        <h2 className="unseen">{t('at.more')}</h2>
        <FindingForms machine={machine} record={record} />
        <PartForm
          parts={day.parts}
          foreseen={machine.items.flatMap((item) => item.parts)}
          kept={kept}
          record={record}
        />
        <FoundWorkForm machine={machine} record={record} />
        <StopgapForm parts={day.parts} record={record} />
      </section>
      <SentBar />
    </div>
  );
}
