import style from './looking-back.module.css';
import type { LifeFit } from './queries.js';

interface Props {
  readonly marks: LifeFit['marks'];
  readonly x: (ageHours: number) => number;
  /** Height at which the row of marks stands. */
  readonly y: number;
}

/** Lives in a row: a cross where a part failed, a dot up to where it has not. */
export function LifeMarks({ marks, x, y }: Props) {
  return marks.map(({ ageHours, failed }) => {
    const at = x(ageHours);
    const key = `${ageHours} ${failed}`;
    return failed ? (
      <path key={key} d={`M${at - 3} ${y - 3}l6 6m0-6l-6 6`} className={style.failed} />
    ) : (
      <circle key={key} cx={at} cy={y} r="2.5" className={style.running} />
    );
  });
}
