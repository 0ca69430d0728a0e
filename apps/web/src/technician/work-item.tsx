import type { FieldItem } from '../data/types.js';
import type { KeptRecord } from '../offline/field-store.js';
import { useWords } from '../words/words.js';
import { ForeseenPart } from './foreseen-part.js';
import type { Recorder } from './recorder.js';
import style from './technician.module.css';
import { TorqueFigure } from './torque-figure.js';
import { isRecorded } from './used-of.js';
import { UsedPart } from './used-part.js';

interface Props {
  readonly item: FieldItem;
  /** Steps show once the cautions are seen. */
  readonly isOpen: boolean;
  readonly isDone: boolean;
  readonly meterHours: string | null;
  /** What is kept of the machine. */
  readonly kept: readonly KeptRecord[];
  readonly record: Recorder;
}

/** One item as steps with torque; done with one press. */
export function WorkItem({ item, isOpen, isDone, meterHours, kept, record }: Props) {
  const words = useWords();
  const { t, minutes } = words;
  const name = words.work(item);
  const { id: itemId, code, slot, stopgapId, roadCallId } = item;
  const done = () =>
    record(
      { kind: 'item-done', itemId, code, slot, stopgapId, roadCallId, meterHours, note: '' },
      t('kept.item-done', { item: name }),
    );
  return (
    <article className={style.work} data-done={isDone}>
      <h3>
        {name} <span className="pencil figure">{minutes(item.minutes)}</span>
      </h3>
      {isDone ? <p role="status">{t('at.item-done')}</p> : null}
      {isDone
        ? item.parts
            .filter((part) => isRecorded(part, kept))
            .map((part) => <UsedPart key={part.name} part={part} kept={kept} record={record} />)
        : null}
      {isOpen && !isDone ? (
        <>
          {item.steps.length > 0 ? (
            <ol className={style.steps}>
              {item.steps.map((step) => (
                <li key={step}>{words.sentence(step)}</li>
              ))}
            </ol>
          ) : null}
          {item.torques.map((torque) => (
            <TorqueFigure key={torque.what} torque={torque} />
          ))}
          {item.parts.map((part) => (
            <ForeseenPart key={part.name} part={part} kept={kept} record={record} />
          ))}
          <button type="button" className="press" onClick={() => void done()}>
            {t('at.done', { item: name })}
          </button>
        </>
      ) : null}
    </article>
  );
}
