import { queryOptions, useQuery } from '@tanstack/react-query';
import { everyPage, queryOf } from '../../data/api.js';
import type { AuditEntry } from '../../data/types.js';
import { en, type WordKey } from '../../words/en.js';
import { useWords, type Words } from '../../words/words.js';

const SHOWN = 12;

const trailQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['audit-entries', machineId],
    queryFn: ({ signal }) => everyPage<AuditEntry>(`/v1/audit-entries${queryOf({ machineId })}`, signal),
  });

/** What was decided about a machine at the desk, newest first: who, when, and why. */
export function MachineTrail({ machineId }: { readonly machineId: string }) {
  const words = useWords();
  const { t, moment } = words;
  const told = (useQuery(trailQuery(machineId)).data ?? []).flatMap((entry) => {
    const what = whatWasDone(entry, words);
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
function whatWasDone({ action, detail }: AuditEntry, words: Words): string | null {
  const key = `trail.${action}`;
  if (!Object.hasOwn(en, key)) return null;
  const text = (name: string) => (detail[name] == null ? '' : String(detail[name]));
  const { hours, dayOfYear, t } = words;
  const limit = [
    text('limitHours') && t('stopgap.holds-hours', { hours: hours(text('limitHours')), day: dayOfYear(text('on')) }),
    text('limitOn') && t('grounds.holds-until', { day: dayOfYear(text('limitOn')) }),
  ];
  return t(key as WordKey, {
    what: text('what'),
    reason: text('reason'),
    because: text('because') && t(`stopgap.because.${text('because')}` as WordKey),
    day: text('on') && dayOfYear(text('on')),
    limit: limit.filter(Boolean).join(', '),
  });
}
