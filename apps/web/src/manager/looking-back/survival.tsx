import { useQuery } from '@tanstack/react-query';
import { bandOf, Chart, pathOf } from '../../design/chart.js';
import { useWords } from '../../words/words.js';
import { Assumptions, Figures } from './figures.js';
import { LifeMarks } from './life-marks.js';
import style from './looking-back.module.css';
import { lifeFitQuery } from './queries.js';

/** Share still running by age: observed steps, fitted curve with its interval, and every life as a mark underneath. */
export function Survival({ asked }: { readonly asked: Readonly<Record<string, string | undefined>> }) {
  const { t, number, percent } = useWords();
  const fit = useQuery(lifeFitQuery(asked)).data;
  if (!fit) return null;
  const ages = [
    ...fit.points.map((point) => point.ageHours),
    ...fit.curve.map((point) => point.ageHours),
    ...fit.marks.map((mark) => mark.ageHours),
  ];
  const most = Math.max(1, ...ages);
  const steps = fit.points.flatMap((point, index): [number, number][] => {
    const before = index === 0 ? 1 : fit.points[index - 1]!.survival;
    return [
      [point.ageHours, before],
      [point.ageHours, point.survival],
    ];
  });
  return (
    <section className="tight">
      <h2>{t('back.survival')}</h2>
      <p className="pencil">
        {t('back.lives', { lives: fit.lives, failures: fit.failures, basis: t(`back.basis.${fit.basis}`) })}
      </p>
      <Chart
        label={t('back.survival-label', { lives: fit.lives, failures: fit.failures })}
        x={[0, most]}
        y={[-0.12, 1]}
        xText={(value) => number(value)}
        yText={(value) => (value < 0 ? '' : percent(value))}
        xTitle={t('back.age')}
        yTitle={t('back.still-running')}
        height={300}
      >
        {(x, y) => (
          <>
            {fit.curve.length > 0 ? (
              <path
                className={style.band}
                d={bandOf(
                  fit.curve.map((point) => [x(point.ageHours), y(point.low)]),
                  fit.curve.map((point) => [x(point.ageHours), y(point.high)]),
                )}
              />
            ) : null}
            <path
              className={style.curve}
              d={pathOf(fit.curve.map((point) => [x(point.ageHours), y(point.survival)]))}
            />
            {steps.length > 0 ? (
              <path
                className={style.steps}
                d={pathOf([[x(0), y(1)], ...steps.map(([at, share]): [number, number] => [x(at), y(share)])])}
              />
            ) : null}
            <LifeMarks marks={fit.marks} x={x} y={y(-0.06)} />
          </>
        )}
      </Chart>
      <p className="small pencil">{t('back.marks')}</p>
      <Figures
        label={t('back.survival')}
        heads={[
          t('back.age'),
          t('back.at-risk'),
          t('back.failed'),
          t('back.still-running'),
          t('back.low'),
          t('back.high'),
        ]}
        rows={fit.points.map((point) => [
          number(point.ageHours, 1),
          number(point.atRisk),
          number(point.failures),
          percent(point.survival),
          percent(point.low),
          percent(point.high),
        ])}
      />
      <Assumptions statement={fit.statement} lines={[...fit.assumptions, ...fit.leftOut]} />
    </section>
  );
}
