import type { FieldItem } from '../data/types.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import style from './technician.module.css';
import { TorqueFigure } from './torque-figure.js';

interface Props {
  readonly item: FieldItem;
  /** Steps show once the cautions are seen. */
  readonly isOpen: boolean;
  readonly isDone: boolean;
  readonly meterHours: string | null;
  readonly record: Recorder;
}

/** One item as steps with torque; done with one press. */
export function WorkItem({ item, isOpen, isDone, meterHours, record }: Props) {
  const words = useWords();
  const { t, minutes, number } = words;
  const name = words.work(item);
  const done = () =>
    record(
      { kind: 'item-done', itemId: item.id, code: item.code, slot: item.slot, meterHours, note: '' },
      t('kept.item-done', { item: name }),
    );
  const use = (part: FieldItem['parts'][number]) =>
    record(
      {
        kind: 'part-used',
        partId: part.partId,
        name: part.name,
        quantity: String(Math.round(part.quantity * 1000) / 1000),
      },
      t('kept.part-used', { n: number(part.quantity, 2), part: part.name }),
    );
  return (
    <article className={style.work} data-done={isDone}>
      <h3>
        {name} <span className="pencil figure">{minutes(item.minutes)}</span>
      </h3>
      {isDone ? <p role="status">{t('at.item-done')}</p> : null}
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
          {item.parts.length > 0 ? (
            <div className="tight">
              {item.parts.map((part) => (
                <button key={part.name} type="button" className="press-quiet" onClick={() => void use(part)}>
                  {t('parts.use', {
                    quantity: t('parts.amount', { n: number(part.quantity, 2), q: part.quantity, unit: part.unit }),
                    part: words.sentence(part.name),
                  })}
                </button>
              ))}
            </div>
          ) : null}
          <button type="button" className="press" onClick={() => void done()}>
            {t('at.done', { item: name })}
          </button>
        </>
      ) : null}
    </article>
  );
}
