import type { HoursDoubt } from '../data/plausible-hours.js';
import { useWords } from '../words/words.js';

/** What a figure would mean, in words; with the figure that was probably meant. */
export function HoursDoubtNote({
  doubt,
  onTake,
}: {
  readonly doubt: HoursDoubt | null;
  readonly onTake: (hours: string) => void;
}) {
  const { t, number } = useWords();
  if (doubt === null) return null;
  const slip = doubt.kind === 'too-many' ? doubt.slip : null;
  return (
    <div className="note straw" role="status">
      <p>
        {doubt.kind === 'not-a-figure'
          ? t('hours.not-a-figure')
          : doubt.kind === 'less'
            ? t('hours.less', { by: number(doubt.by, 1) })
            : t('hours.too-many', { hours: number(doubt.hours, 1), days: number(doubt.days, 1) })}
      </p>
      {slip === null ? null : (
        <button type="button" className="press-quiet" onClick={() => onTake(String(slip))}>
          {t('hours.meant', { hours: number(slip, 1) })}
        </button>
      )}
    </div>
  );
}
