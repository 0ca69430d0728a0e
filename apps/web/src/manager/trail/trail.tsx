import { queryOptions, useQuery } from '@tanstack/react-query';
import { everyPage, queryOf } from '../../data/api.js';
import type { AuditEntry } from '../../data/types.js';
import { en, type WordKey } from '../../words/en.js';
import { stopgapLimit } from '../../words/stopgap-limit.js';
import { useWords, type Words } from '../../words/words.js';
import { useWorkName } from '../work-name.js';

const SHOWN = 12;

/** All that was done with a machine, or with one row. */
type Of = { readonly machineId: string } | { readonly subjectId: string };

const trailQuery = (of: Of) =>
  queryOptions({
    queryKey: ['audit-entries', of],
    queryFn: ({ signal }) => everyPage<AuditEntry>(`/v1/audit-entries${queryOf({ ...of })}`, signal),
  });

/** What was decided, or taken back by whoever had recorded it, newest first: who, when, and why. */
export function Trail({ of }: { readonly of: Of }) {
  const words = useWords();
  const { t, moment } = words;
  const workName = useWorkName();
  const told = (useQuery(trailQuery(of)).data ?? []).flatMap((entry) => {
    const what = whatWasDone(entry, words, workName);
    return what === null ? [] : [{ entry, what }];
  });
  if (told.length === 0) return null;
  return (
    <section className="tight">
      <h2>{t('trail.title')}</h2>
      <ul>
        {told
          .slice(-SHOWN)
          .reverse()
          .map(({ entry: { id, at, actorName }, what }) => (
            <li key={id}>
              {what} <span className="pencil">{t('trail.by', { name: actorName, when: moment(at) })}</span>
            </li>
          ))}
      </ul>
    </section>
  );
}

/** null = it is told elsewhere. */
function whatWasDone(
  { action, detail }: AuditEntry,
  words: Words,
  workName: ReturnType<typeof useWorkName>,
): string | null {
  const key = `trail.${action}`;
  if (!Object.hasOwn(en, key)) return null;
  const text = (name: string) => (detail[name] == null ? '' : String(detail[name]));
  const { hours, dayOfYear, number, t } = words;
  const day = text('on') || text('doneOn');
  const because = text('because') && t(`${action.split('.')[0]}.because.${text('because')}` as WordKey);
  const limit = { limitHours: text('limitHours') || null, limitOn: text('limitOn') || null, countedFrom: text('on') };
  return t(key as WordKey, {
    what: text('what'),
    reason: text('reason'),
    because,
    why: [because, text('reason')].filter(Boolean).join(': '),
    day: day && dayOfYear(day),
    work: text('code') && workName(text('code'), text('slot') || null),
    n: text('quantity') && number(Number(text('quantity')), 3),
    old: text('oldHours') && hours(text('oldHours')),
    new: text('newHours') && hours(text('newHours')),
    limit: stopgapLimit(limit, words, dayOfYear),
  });
}
