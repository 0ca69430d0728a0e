import type { DueItem } from '../../data/types.js';
import { type Column, StackedTable } from '../../design/stacked-table.js';
import { Why } from '../../design/why.js';
import { dueReasons } from '../../words/due-reason.js';
import { useWords } from '../../words/words.js';

/** Every service item of a machine with its range of dates, soonest first. */
export function MachineWork({ due, today }: { readonly due: readonly DueItem[]; readonly today: string }) {
  const words = useWords();
  const { t, dayBeside, money } = words;
  if (due.length === 0) return null;
  const dateText = (date: string | null) => (date === null ? t('due.far') : dayBeside(date, today));
  const columns: Column<DueItem>[] = [
    {
      head: t('due.work'),
      isBare: true,
      isLine: true,
      cell: (item) => (
        <Why label={words.work(item)} title={t('due.why-title', { day: dateText(item.p50) })}>
          <ul>
            {dueReasons(item, words).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Why>
      ),
    },
    { head: t('forecast.early'), cell: ({ p10 }) => dateText(p10) },
    { head: t('forecast.middle'), cell: ({ p50 }) => dateText(p50) },
    { head: t('forecast.late'), cell: ({ p90 }) => dateText(p90) },
    {
      head: t('due.price'),
      isNumber: true,
      cell: ({ deferralCents }) => (deferralCents === null ? '–' : money(deferralCents)),
    },
  ];
  return (
    <section>
      <h2>{t('forecast.due')}</h2>
      <StackedTable
        label={t('forecast.due')}
        columns={columns}
        rows={due.toSorted((a, b) => ((a.p50 ?? '9') < (b.p50 ?? '9') ? -1 : 1))}
        keyOf={({ id }) => id}
      />
    </section>
  );
}
