import type { DueItem } from '../../data/types.js';
import { Scrolling } from '../../design/scrolling.js';
import { Why } from '../../design/why.js';
import { dueReasons } from '../../words/due-reason.js';
import { useWords } from '../../words/words.js';

/** Every service item of a machine with its range of dates, soonest first. */
export function MachineWork({ due, today }: { readonly due: readonly DueItem[]; readonly today: string }) {
  const words = useWords();
  const { t, dayBeside, money } = words;
  if (due.length === 0) return null;
  const dateText = (date: string | null) => (date === null ? t('due.far') : dayBeside(date, today));
  return (
    <section>
      <h2>{t('forecast.due')}</h2>
      <Scrolling label={t('forecast.due')}>
        <table className="stacked">
          <thead>
            <tr>
              <th scope="col">{t('due.work')}</th>
              <th scope="col">{t('forecast.early')}</th>
              <th scope="col">{t('forecast.middle')}</th>
              <th scope="col">{t('forecast.late')}</th>
              <th scope="col" className="number">
                {t('due.price')}
              </th>
            </tr>
          </thead>
          <tbody>
            {due
              .toSorted((a, b) => ((a.p50 ?? '9') < (b.p50 ?? '9') ? -1 : 1))
              .map((item) => {
                const title = words.work(item);
                return (
                  <tr key={item.id}>
                    <th scope="row" data-whole>
                      <Why label={title} title={t('due.why-title', { day: dateText(item.p50) })}>
                        <ul>
                          {dueReasons(item, words).map((line) => (
                            <li key={line}>{line}</li>
                          ))}
                        </ul>
                      </Why>
                    </th>
                    <td data-head={t('forecast.early')}>{dateText(item.p10)}</td>
                    <td data-head={t('forecast.middle')}>{dateText(item.p50)}</td>
                    <td data-head={t('forecast.late')}>{dateText(item.p90)}</td>
                    <td className="number" data-head={t('due.price')}>
                      {item.deferralCents === null ? '–' : money(item.deferralCents)}
                    </td>
                  </tr>
                );
              })}
          </tbody>
        </table>
      </Scrolling>
    </section>
  );
}
