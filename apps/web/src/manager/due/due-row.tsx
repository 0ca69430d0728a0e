import { chanceOverdue, OVERDUE_FROM } from '@deckround/upkeep/chance-overdue';
import { Link } from '@tanstack/react-router';
import type { DueItem } from '../../data/types.js';
import { Why } from '../../design/why.js';
import { dueReasons } from '../../words/due-reason.js';
import { useWords } from '../../words/words.js';
import style from './due.module.css';
import { Ruler, type RulerAxis } from './ruler.js';
import type { Tolerance } from './tolerance.js';

interface Props {
  readonly item: DueItem;
  readonly axis: RulerAxis;
  readonly tolerance: Tolerance | null;
  /** Where the rows are grouped by site, its name stands above them. */
  readonly hasSite: boolean;
}

export function DueRow({ item, axis, tolerance, hasSite }: Props) {
  const words = useWords();
  const { t, day, dayOfYear, money, percent } = words;
  const chance = chanceOverdue(item, axis.today);
  const title = words.work(item);
  const middle = item.p50 === null ? t('due.far') : item.p50 < axis.from ? dayOfYear(item.p50) : day(item.p50);
  return (
    <tr>
      <th scope="row" className={style.machine}>
        <Link to="/machines/$id/forecast" params={{ id: item.machineId }}>
          {item.machineCode}
        </Link>
        {hasSite ? <span className="small pencil">{item.siteName}</span> : null}
      </th>
      <td className={style.work}>
        <Why label={title} title={t('due.why-title', { day: middle })}>
          <ul>
            {dueReasons(item, words).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Why>
        <span className="small pencil">
          {middle}
          {chance >= OVERDUE_FROM ? (
            <strong className={style.late}> △ {t('due.chance', { share: percent(chance) })}</strong>
          ) : null}
          {item.kind === 'stopgap' ? (
            <>
              <strong className={style.stopgap}> {t('state.stopgap')}</strong>{' '}
              <Link to="/machines/$id/forecast" params={{ id: item.machineId }} hash="stopgaps">
                {t('stopgap.decide')}
              </Link>
            </>
          ) : null}
        </span>
      </td>
      <td className={style.ruler}>
        <Ruler
          axis={axis}
          mark={{ p10: item.p10, p50: item.p50, p90: item.p90, tolerance }}
          label={t('due.ruler', {
            early: item.p10 === null ? '–' : day(item.p10),
            middle,
            late: item.p90 === null ? '–' : day(item.p90),
          })}
        />
      </td>
      <td className="number">
        {item.deferralCents === null ? (
          '–'
        ) : (
          <Why label={money(item.deferralCents)} title={t('due.price')}>
            <p>{t('due.why-price', { money: money(item.deferralCents), day: day(item.costFrom) })}</p>
            {item.timingCostCents === null ? null : (
              <table>
                <caption className="small pencil">{t('due.price-by-day')}</caption>
                <tbody>
                  <tr>
                    {item.timingCostCents.slice(0, 7).map((cents, index) => (
                      <td key={index} className="number">
                        {money(cents)}
                      </td>
                    ))}
                  </tr>
                </tbody>
              </table>
            )}
          </Why>
        )}
      </td>
    </tr>
  );
}
