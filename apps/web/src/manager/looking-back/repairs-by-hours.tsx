import { bandOf, Chart, pathOf } from '../../design/chart.js';
import { useWords } from '../../words/words.js';
import style from './looking-back.module.css';
import type { MachineAdvice, MeanCumulative } from './queries.js';

interface Props {
  readonly record: MachineAdvice;
  /** Mean repairs of the machine's class by machine hours. */
  readonly fleet: MeanCumulative['points'];
}

/** Repairs counted up by machine hours: this machine's steps, and what its class saw over the same hours. */
export function RepairsByHours({ record, fleet }: Props) {
  const { t, number } = useWords();
  const { fromHours, toHours, repairs } = record;
  if (toHours <= fromHours) return null;
  // The class counts from its youngest machine on: both lines begin where this one was taken on.
  const before = fleet.findLast((point) => point.ageHours <= fromHours)?.mean ?? 0;
  const seen = fleet.filter((point) => point.ageHours > fromHours && point.ageHours <= toHours);
  const most = Math.max(1, repairs.length, ...seen.map((point) => point.high - before));
  return (
    <section className="tight">
      <h2>{t('record.by-hours')}</h2>
      <Chart
        label={t('record.by-hours')}
        x={[fromHours, toHours]}
        y={[0, most * 1.05]}
        xText={(value) => number(value)}
        yText={(value) => number(value, 1)}
        xTitle={t('back.age')}
        yTitle={t('back.repairs')}
        height={260}
      >
        {(x, y) => {
          const held = (value: number) => y(Math.max(0, value - before));
          const steps = repairs.flatMap((repair, index): [number, number][] => [
            [x(repair.hours), y(index)],
            [x(repair.hours), y(index + 1)],
          ]);
          return (
            <>
              {seen.length > 0 ? (
                <path
                  className={style.band}
                  data-which="1"
                  d={bandOf(
                    seen.map((point) => [x(point.ageHours), held(point.low)]),
                    seen.map((point) => [x(point.ageHours), held(point.high)]),
                  )}
                />
              ) : null}
              <path
                className={style.grade}
                data-which="1"
                d={pathOf([[x(fromHours), y(0)], ...seen.map((p): [number, number] => [x(p.ageHours), held(p.mean)])])}
              />
              <path
                className={style.grade}
                d={pathOf([[x(fromHours), y(0)], ...steps, [x(toHours), y(repairs.length)]])}
              />
            </>
          );
        }}
      </Chart>
      <p className="small pencil">{t('record.marks')}</p>
    </section>
  );
}
