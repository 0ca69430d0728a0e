import { useEffect } from 'react';
import type { Technician } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import { ARROW_KEYS, type ArrowKey } from './move-choice.js';
import type { Move, useMove } from './use-move.js';
import style from './week.module.css';

interface Props {
  readonly move: Move;
  readonly siteName: string;
  readonly technicians: readonly Technician[];
  readonly slip: React.RefObject<HTMLDivElement | null>;
  readonly onStep: (key: ArrowKey) => void;
  readonly onFinish: () => void;
  readonly onCancel: () => void;
}

const SIGNS: Readonly<Record<ArrowKey, string>> = { ArrowLeft: '←', ArrowRight: '→', ArrowUp: '↑', ArrowDown: '↓' };

/** What the place under the hand costs, whom it shifts and what it breaks: at the pointer, or at the foot for keys. */
export function MoveSlip({ move, siteName, technicians, slip, onStep, onFinish, onCancel }: Props) {
  const { t, money, day, range } = useWords();
  const { place, closed, prices, by } = move;
  // By keys and presses the place goes where no hand points: it is brought into sight.
  useEffect(() => {
    if (by === 'keys' && place !== null)
      document.querySelector('[data-target="true"]')?.scrollIntoView({ block: 'center' });
  }, [by, place]);
  const name = (id: string) => technicians.find((each) => each.id === id)?.name ?? t('unknown');
  return (
    <div ref={slip} className={style.slip} data-by={by} role="status">
      <p className="small pencil">{siteName}</p>
      {prices === null ? <p>{t('move.pricing')}</p> : null}
      {prices !== null && place === null && closed === null ? <p>{t('move.nowhere')}</p> : null}
      {closed === null ? null : (
        <p>
          <strong>✕ {t('move.closed', { day: day(closed.date), technician: name(closed.technicianId) })}</strong>{' '}
          {t(`move.obstacle.${closed.obstacle}`)}
        </p>
      )}
      {place === null ? null : (
        <>
          <p>
            {day(place.date)}, {name(place.technicianId)},{' '}
            <span className="figure">{range(place.startAt, place.endAt)}</span>
          </p>
          <p className={style.price}>
            {place.isWhereItStands
              ? t('move.stands')
              : place.cents >= 0
                ? t('move.costs', { money: money(place.cents) })
                : t('move.saves', { money: money(-place.cents) })}
          </p>
          {prices?.places.some((each) => each.isWhereItStands) ? null : (
            <p className="small">{t('move.against-leaving')}</p>
          )}
          {place.shifts.length > 0 ? <p className="small">{t('move.shifts', { n: place.shifts.length })}</p> : null}
          {place.breaks.length > 0 ? (
            <p className={style.breaks}>△ {t('move.breaks', { n: place.breaks.length })}</p>
          ) : null}
        </>
      )}
      {by === 'keys' ? (
        <div className="row">
          {ARROW_KEYS.map((key) => (
            <button
              key={key}
              type="button"
              className="press-quiet"
              aria-label={t(`move.${key}`)}
              disabled={!place}
              onClick={() => onStep(key)}
            >
              {SIGNS[key]}
            </button>
          ))}
        </div>
      ) : null}
      {by === 'keys' ? (
        <div className="row">
          <button type="button" className="press" disabled={!place || place.isWhereItStands} onClick={onFinish}>
            {t('move.put')}
          </button>
          <button type="button" className="press-quiet" onClick={onCancel}>
            {t('cancel')}
          </button>
          <span className={`small pencil ${style.keysHint}`}>{t('move.keys')}</span>
        </div>
      ) : null}
    </div>
  );
}

/** After a move: what it did, and the way back. */
export function MoveDone({ moves }: { readonly moves: ReturnType<typeof useMove> }) {
  const { t, money } = useWords();
  const { done, error, lastUndo, undo, isApplying } = moves;
  if (error) return <Failure error={error} />;
  // There is no way back to where nobody can make the visit.
  const isRescued = done?.difference.visits.some((visit) => visit.what === 'moved' && visit.from === null) ?? false;
  if (done === null || (lastUndo === null && !isRescued)) return null;
  const told = done.difference.visits.filter((visit) => visit.breaksPromise);
  const cents = done.difference.cents.total;
  return (
    <div className="note" role="status">
      <p>
        {t('move.done', { n: done.difference.visits.length })}{' '}
        {cents >= 0 ? t('move.costs', { money: money(cents) }) : t('move.saves', { money: money(-cents) })}{' '}
        {lastUndo === null || isRescued ? null : (
          <button type="button" className="press-plain" onClick={undo} disabled={isApplying}>
            {t('move.undo')}
          </button>
        )}
      </p>
      {told.length > 0 ? (
        <p>
          △ {t('move.tell')} {told.map((visit) => `${visit.siteName} (${visit.customerName})`).join('; ')}
        </p>
      ) : null}
    </div>
  );
}
