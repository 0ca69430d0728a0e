import { queryOptions, useQuery } from '@tanstack/react-query';
import { api } from '../../data/api.js';
import type { ChargesSince } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { LeaveAsItIs } from './leave-as-it-is.js';

type Line = ChargesSince['missing'][number];

const sinceQuery = (id: string) =>
  queryOptions({
    queryKey: ['charge-documents', id, 'since'],
    queryFn: ({ signal }) => api.get<ChargesSince>(`/v1/charge-documents/${id}/since`, signal),
  });

/** What came to light, or was taken back, since a document was issued: somebody drafts it anew, or leaves it as it is. */
export function SinceIssue({ id }: { readonly id: string }) {
  const { t, moment } = useWords();
  const since = useQuery(sinceQuery(id)).data;
  if (since === undefined || since.missing.length + since.surplus.length === 0) return null;
  const { missing, surplus, left } = since;
  return (
    <div className={`note stack${left === null ? ' straw' : ''}`} role="status">
      <Lines title={t('charges.missing')} lines={missing} />
      <Lines title={t('charges.surplus')} lines={surplus} />
      {left === null ? (
        <>
          <p>{t('charges.since-what')}</p>
          <LeaveAsItIs id={id} />
        </>
      ) : (
        <p>{t('charges.left', { name: left.by, when: moment(left.at), reason: left.reason })}</p>
      )}
    </div>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly Line[] }) {
  const words = useWords();
  if (lines.length === 0) return null;
  return (
    <div className="tight">
      <p>
        <strong>{title}</strong>
      </p>
      <ul>
        {lines.map((line) => (
          <li key={`${line.code} ${line.slot} ${line.machineCode}`}>{named(line, words)}</li>
        ))}
      </ul>
    </div>
  );
}

function named({ kind, code, name, slot, machineCode, quantity }: Line, words: ReturnType<typeof useWords>): string {
  if (kind === 'part') return `${words.number(Number(quantity), 3)} × ${words.sentence(name)}`;
  return `${machineCode}: ${words.work({ code, slot, title: name })}`;
}
