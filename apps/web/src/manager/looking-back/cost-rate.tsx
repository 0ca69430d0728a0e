import { bandOf, Chart, pathOf } from '../../design/chart.js';
import { useWords } from '../../words/words.js';
import { Assumptions, Figures } from './figures.js';
import style from './looking-back.module.css';
import type { ReplacementAge } from './queries.js';
import { twoDigits } from './two-digits.js';

/** Pixels that the name of a line takes: a line nearer than that would cross it. */
const NAME_WIDTH = 150;

/** What a thousand hours cost by the age at which the part is replaced; the best age and the present interval on it. */
export function CostRate({ age }: { readonly age: ReplacementAge }) {
  const { t, number, money, roundMoney, hours } = useWords();
  const { curve, bestHours, currentHours } = age;
  if (curve.length === 0) return null;
  const most = Math.max(...curve.map((point) => point.ageHours));
  // The costliest early ages would flatten the rest.
  const middle = curve.map((point) => point.centsPerThousandHours).toSorted((a, b) => a - b);
  const high = 1.6 * Math.max(age.runToFailureCentsPerThousandHours, middle[Math.floor(middle.length / 2)]!);
  const held = (cents: number) => Math.min(high, cents);
  return (
    <section className="tight">
      <h2>{t('back.cost-rate')}</h2>
      <Chart
        label={t('back.cost-rate')}
        x={[0, most]}
        y={[0, high]}
        xText={(value) => number(value)}
        yText={(value) => roundMoney(value)}
        xTitle={t('back.replaced-at')}
        yTitle={t('back.per-thousand')}
        height={300}
      >
        {(x, y) => {
          // The names of two lines that stand near each other both stand to the right of them.
          const besideLines = (age: number) => {
            const near = [bestHours, currentHours].filter((each) => each !== null && each <= most) as number[];
            return 5 + Math.max(x(age), ...near.map(x).filter((each) => each - x(age) < NAME_WIDTH));
          };
          return (
            <>
              <path
                className={style.band}
                d={bandOf(
                  curve.map((point) => [x(point.ageHours), y(held(point.low))]),
                  curve.map((point) => [x(point.ageHours), y(held(point.high))]),
                )}
              />
              <path
                className={style.curve}
                d={pathOf(curve.map((point) => [x(point.ageHours), y(held(point.centsPerThousandHours))]))}
              />
              {bestHours === null || bestHours > most ? null : (
                <g>
                  <line x1={x(bestHours)} x2={x(bestHours)} y1={y(0)} y2={y(high)} className={style.best} />
                  <text x={besideLines(bestHours)} y={y(high) + 12}>
                    {t('back.best', { hours: `${number(twoDigits(bestHours))} h` })}
                  </text>
                </g>
              )}
              {currentHours === null || currentHours > most ? null : (
                <g>
                  <line x1={x(currentHours)} x2={x(currentHours)} y1={y(0)} y2={y(high)} className={style.now} />
                  <text x={besideLines(currentHours)} y={y(high) + 28}>
                    {t('back.now', { hours: hours(currentHours) })}
                  </text>
                </g>
              )}
            </>
          );
        }}
      </Chart>
      <Figures
        label={t('back.cost-rate')}
        heads={[t('back.age'), t('back.per-thousand'), t('back.low'), t('back.high')]}
        rows={curve.map((point) => [
          number(point.ageHours),
          money(Math.round(point.centsPerThousandHours)),
          money(Math.round(point.low)),
          money(Math.round(point.high)),
        ])}
      />
      <Assumptions statement={age.statement} lines={age.assumptions} />
    </section>
  );
}
