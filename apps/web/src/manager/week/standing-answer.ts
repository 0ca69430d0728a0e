import type { Visit } from '../../data/types.js';

/** What a site's word means for the visit as it stands now; null = nothing any more. */
export function standingAnswer({ answer, startAt }: Pick<Visit, 'answer' | 'startAt'>): 'suits' | 'asked' | null {
  if (answer?.kind === 'move') return answer.state === 'open' ? 'asked' : null;
  // It was said of another time.
  return answer?.kind === 'suits' && answer.aboutStart === startAt ? 'suits' : null;
}
