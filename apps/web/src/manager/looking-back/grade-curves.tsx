import { bandOf, Chart, pathOf } from '../../design/chart.js';
import { useWords } from '../../words/words.js';
import { LifeMarks } from './life-marks.js';
import style from './looking-back.module.css';
import type { GradeComparison } from './queries.js';

interface Props {
  readonly comparison: GradeComparison;
}
type Pair = readonly [number, number];

/**
 * Share of each grade still running by age: the first drawn through, the second dashed, each with its interval up to the
 * greatest age watched, and a mark for every life underneath, a row a grade.
 */
export function GradeCurves({ comparison }: Props) {
  const { t, number, percent } = useWords();
  const { grades, points, marks, watchedToHours } = comparison;
  const most = Math.max(1, ...watchedToHours);
  const label = t('back.grades-label', { first: grades[0]!, second: grades[1]! });
  return (
    <>
      <Chart
        label={label}
        x={[0, most]}
        y={[-0.2, 1]}
        xText={(value) => number(value)}
        yText={(value) => (value < 0 ? '' : percent(value))}
        xTitle={t('back.age')}
        yTitle={t('back.still-running')}
        height={300}
      >
        {(x, y) =>
          grades.map((grade, which) => {
            const steps = points[which]!;
            const end = watchedToHours[which]!;
            const line = (share: (index: number) => number) =>
              stepsOf(
                steps.map((step) => step.ageHours),
                share,
                end,
              ).map(([at, s]): Pair => [x(at), y(s)]);
            return (
              <g key={grade}>
                <path
                  className={style.band}
                  data-which={which}
                  d={bandOf(
                    line((index) => steps[index]!.low),
                    line((index) => steps[index]!.high),
                  )}
                />
                <path className={style.grade} data-which={which} d={pathOf(line((index) => steps[index]!.survival))} />
                <text x={x(end) - 4} y={y(steps.at(-1)?.survival ?? 1) - 6} textAnchor="end">
                  {grade}
                </text>
                <LifeMarks marks={marks[which]!} x={(age) => x(Math.min(most, age))} y={y(-0.07 - 0.08 * which)} />
              </g>
            );
          })
        }
      </Chart>
      <p className="small pencil">{t('back.grades-marks', { first: grades[0]!, second: grades[1]! })}</p>
    </>
  );
}

/** A curve that holds its share until the next failure, from all running at age 0 to the greatest age watched. */
function stepsOf(ages: readonly number[], share: (index: number) => number, end: number): Pair[] {
  const path: Pair[] = [[0, 1]];
  let before = 1;
  for (const [index, age] of ages.entries()) {
    path.push([age, before]);
    before = share(index);
    path.push([age, before]);
  }
  path.push([end, before]);
  return path;
}
