import { useQuery } from '@tanstack/react-query';
import { dueQuery } from '../../data/queries.js';
import type { VisitItem } from '../../data/types.js';
import { dueReasons } from '../../words/due-reason.js';
import { useWords } from '../../words/words.js';

/** Why a piece of work falls due: the planner's own sentence, or in another language what its date is made of. */
export function Evidence({ item }: { readonly item: VisitItem }) {
  const words = useWords();
  // What was done beside the plan says itself why; it need not fall due.
  const isTold = words.language === 'en' || item.role === 'found';
  const { machineId, code } = item;
  const rows = useQuery({ ...dueQuery({ machineId, code }), enabled: !isTold }).data ?? [];
  if (isTold) return item.reason === null ? null : <p className="pencil small">{words.sentence(item.reason)}</p>;
  const due = rows.find((row) => row.slot === item.slot);
  if (!due) return null;
  return (
    <ul className="pencil small">
      {dueReasons(due, words).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
