import { useMutation, useQueryClient } from '@tanstack/react-query';
import { call } from '../../data/api.js';
import type { FieldRecord } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords, type Words } from '../../words/words.js';

/** A fact from the field that came too late, or is too odd, to count by itself: it counts, or is kept without effect. */
export function LateRecord({ record, machine }: { readonly record: FieldRecord; readonly machine: string }) {
  const words = useWords();
  const { t, moment, sentence } = words;
  const client = useQueryClient();
  const decide = useMutation({
    mutationFn: (decision: 'accept' | 'dismiss') =>
      call<FieldRecord>('POST', `/v1/field-records/${record.id}/decision`, {
        body: { decision },
        version: record.version,
      }),
    onSettled: () => client.invalidateQueries(),
  });
  const what = whatItSays(record.fact, words);
  return (
    <>
      <h3>{[machine, what].filter(Boolean).join(': ')}</h3>
      <p>
        {t('decide.recorded', { name: record.recordedByName, when: moment(believedTime(record)) })}{' '}
        <span className="pencil">{record.reviewReason === null ? null : sentence(record.reviewReason)}</span>
      </p>
      <div className="row">
        <button type="button" className="press" disabled={decide.isPending} onClick={() => decide.mutate('accept')}>
          {t('decide.accept')}
        </button>
        <button
          type="button"
          className="press-quiet"
          disabled={decide.isPending}
          onClick={() => decide.mutate('dismiss')}
        >
          {t('decide.dismiss')}
        </button>
      </div>
      <Failure error={decide.error} />
    </>
  );
}

/** When it happened: the device's time, put right where its clock was off by more than the five minutes let pass. */
function believedTime({ deviceAt, skewSeconds }: FieldRecord): string {
  const shift = Math.abs(skewSeconds) > 300 ? skewSeconds * 1000 : 0;
  return new Date(Date.parse(deviceAt) + shift).toISOString();
}

/** The fact as the technician's own list of records words it. */
function whatItSays(fact: FieldRecord['fact'], { t, hours, minutes, named, sentence }: Words): string {
  const text = (name: string) => String(fact[name] ?? '');
  switch (fact['kind']) {
    case 'reading':
      return t('kept.reading', { hours: hours(text('hours')) });
    case 'item-done':
      return t('kept.item-done', { item: named(`item.${text('code')}`, text('code')) });
    case 'part-used':
      return t('kept.part-used', { n: text('quantity'), part: sentence(text('name')) });
    case 'part-taken-back':
      return t('kept.part-taken-back', { n: text('quantity'), part: sentence(text('name')) });
    case 'found-work':
      return t(fact['done'] === true ? 'kept.found-done' : 'kept.found-owed', { what: text('title') });
    case 'stopgap':
      return t('kept.stopgap', { what: text('description') });
    case 'finding':
      return text('observation');
    case 'work-time':
      return t('decide.work-time', {
        time: minutes((Date.parse(text('endedAt')) - Date.parse(text('startedAt'))) / 60_000),
      });
    case 'visit-finish':
      return t('decide.visit-finish', { name: text('signedBy') });
    default:
      return t('kept.cautions-seen');
  }
}
