import { useQuery } from '@tanstack/react-query';
import { everyPage, queryOf } from '../data/api.js';
import type { VisitAnswer } from '../data/types.js';
import { addDays } from '../words/local-date.js';
import { useWords } from '../words/words.js';

/** How long it is told what became of a wish. */
const DAYS_TOLD = 14;

interface Props {
  readonly siteId: string;
  readonly today: string;
}

/** Wishes for another day that ended with their visit before the shop answered. */
export function EndedWishes({ siteId, today }: Props) {
  const { t, day } = useWords();
  const answers = useQuery({
    queryKey: ['visits', 'answers', siteId],
    queryFn: ({ signal }) => everyPage<VisitAnswer>(`/v1/visit-answers${queryOf({ siteId })}`, signal),
  }).data;
  const ended = (answers ?? []).flatMap(({ id, aboutDate, reason, state }) =>
    (state === 'made' || state === 'given-up') && aboutDate >= addDays(today, -DAYS_TOLD)
      ? [{ id, aboutDate, reason, state } as const]
      : [],
  );
  return ended.map(({ id, aboutDate, reason, state }) => (
    <p key={id} className="note tight">
      {t('answer.asked-of', { day: day(aboutDate), reason })} <strong>{t(`answer.state.${state}`)}</strong>
    </p>
  ));
}
