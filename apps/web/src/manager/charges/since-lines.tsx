import { queryOptions, useQuery } from '@tanstack/react-query';
import { api } from '../../data/api.js';
import type { ChargesSince } from '../../data/types.js';
import { useWords } from '../../words/words.js';

type Line = ChargesSince['missing'][number];

export const sinceQuery = (id: string) =>
  queryOptions({
    queryKey: ['charge-documents', id, 'since'],
    queryFn: ({ signal }) => api.get<ChargesSince>(`/v1/charge-documents/${id}/since`, signal),
  });

/** What an issued document lacks of what is on record by now, and what it charges too much. */
export function SinceLines({ id }: { readonly id: string }) {
  const { t } = useWords();
  const { missing, surplus } = useQuery(sinceQuery(id)).data ?? { missing: [], surplus: [] };
  return (
    <>
      <Lines title={t('charges.missing')} lines={missing} />
      <Lines title={t('charges.surplus')} lines={surplus} />
    </>
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
