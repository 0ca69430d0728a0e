import { queryOptions, useQuery } from '@tanstack/react-query';
import { everyPage, queryOf } from '../data/api.js';
import type { Completion, Finding, FollowUp, Stopgap } from '../data/types.js';
import { stopgapLimit } from '../words/stopgap-limit.js';
import { useWords } from '../words/words.js';

const SHOWN = 8;

const ofMachine = <T,>(path: string, machineId: string) =>
  queryOptions({
    queryKey: [path, machineId],
    queryFn: ({ signal }) => everyPage<T>(`/v1/${path}${queryOf({ machineId })}`, signal),
  });

/** What was done and found, and what is still owed. */
export function History({ machineId }: { readonly machineId: string }) {
  const words = useWords();
  const { t, dayOfYear, day } = words;
  const done = useQuery(ofMachine<Completion>('completions', machineId)).data ?? [];
  const found = useQuery(ofMachine<Finding>('findings', machineId)).data ?? [];
  const owed = (useQuery(ofMachine<FollowUp>('follow-ups', machineId)).data ?? []).filter((each) => !each.closedOn);
  const stopgaps = useQuery(ofMachine<Stopgap>('stopgaps', machineId)).data ?? [];
  const limitOf = (stopgapId: string | null) => {
    const stopgap = stopgaps.find((each) => each.id === stopgapId);
    if (!stopgap) return '';
    const { limitHours, limitOn, madeOn, renewedOn } = stopgap;
    const limit = stopgapLimit({ limitHours, limitOn, countedFrom: renewedOn ?? madeOn }, words, day);
    return limit && `· ${limit}`;
  };
  return (
    <>
      {owed.length > 0 ? (
        <section className="tight">
          <h2>{t('grounds.owed')}</h2>
          <ul>
            {owed.map((each) => (
              <li key={each.id}>
                {each.owed} <span className="pencil">{limitOf(each.stopgapId)}</span>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      <section className="tight">
        <h2>{t('grounds.done')}</h2>
        {done.length + found.length === 0 ? <p className="pencil">{t('grounds.nothing-done')}</p> : null}
        <ul>
          {done
            .slice(-SHOWN)
            .reverse()
            .map((each) => (
              <li key={each.id}>
                {words.named(`item.${each.itemCode}`, each.itemCode)}{' '}
                <span className="pencil">{dayOfYear(each.doneOn)}</span>
              </li>
            ))}
          {found
            .slice(-SHOWN)
            .reverse()
            .map((each) => (
              <li key={each.id}>
                {each.observation} <span className="pencil">{dayOfYear(each.foundOn)}</span>
              </li>
            ))}
        </ul>
      </section>
    </>
  );
}
