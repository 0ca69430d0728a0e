import type { Reading } from '../../data/types.js';
import { linear } from '../../design/scale.js';
import { useWords } from '../../words/words.js';
import style from './readings.module.css';

const NEIGHBOURS = 8;
const [WIDTH, HEIGHT] = [420, 130] as const;

/** The reading among its neighbours in time: accepted ones as dots, this one as a cross, the suggestion as a ring. */
export function ReadingChart({ reading, all }: { readonly reading: Reading; readonly all: readonly Reading[] }) {
  const { t, hours, dayOfYear } = useWords();
  const at = (each: Reading) => Date.parse(each.readAt);
  const accepted = all.filter((each) => each.status === 'accepted').toSorted((a, b) => at(a) - at(b));
  const split = accepted.findIndex((each) => at(each) > at(reading));
  const middle = split < 0 ? accepted.length : split;
  const near = accepted.slice(Math.max(0, middle - NEIGHBOURS), middle + NEIGHBOURS);
  if (near.length === 0) return <p className="pencil">{t('readings.alone')}</p>;
  const suggested = reading.suggestedHours === null ? null : Number(reading.suggestedHours);
  const levels = [...near.map((each) => Number(each.hours)), ...(suggested === null ? [] : [suggested])];
  const [low, high] = [Math.min(...levels), Math.max(...levels)];
  const room = Math.max(4, (high - low) * 0.25);
  const times = [...near.map(at), at(reading)];
  const x = linear([Math.min(...times), Math.max(...times)], [12, WIDTH - 12]);
  const y = linear([low - room, high + room], [HEIGHT - 22, 8]);
  const own = Number(reading.hours);
  const [ownX, ownY] = [x(at(reading)), Math.max(12, Math.min(HEIGHT - 28, y(own)))];
  const isOff = own < low - room || own > high + room;
  const isRight = ownX > WIDTH / 2;
  return (
    <svg
      className={style.chart}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={t('readings.chart', { n: near.length })}
    >
      <line x1="0" x2={WIDTH} y1={HEIGHT - 18} y2={HEIGHT - 18} className={style.axis} />
      <text x="2" y={HEIGHT - 4}>
        {dayOfYear(near[0]!.readAt.slice(0, 10))}
      </text>
      <text x={WIDTH - 2} y={HEIGHT - 4} textAnchor="end">
        {dayOfYear(near.at(-1)!.readAt.slice(0, 10))}
      </text>
      <polyline
        points={near.map((each) => `${x(at(each))},${y(Number(each.hours))}`).join(' ')}
        className={style.line}
      />
      {near.map((each) => (
        <circle key={each.id} cx={x(at(each))} cy={y(Number(each.hours))} r="3" className={style.dot} />
      ))}
      {suggested === null ? null : <circle cx={ownX} cy={y(suggested)} r="6" className={style.ring} />}
      <path d={`M${ownX - 5} ${ownY - 5}l10 10m0-10l-10 10`} className={style.cross} />
      {isOff ? (
        <text x={ownX + (isRight ? -10 : 10)} y={ownY + 4} textAnchor={isRight ? 'end' : 'start'}>
          {own > high ? '↑' : '↓'} {hours(own)}
        </text>
      ) : null}
    </svg>
  );
}
