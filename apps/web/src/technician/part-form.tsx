import { useState } from 'react';
import type { FieldDay } from '../data/types.js';
import type { KeptRecord } from '../offline/field-store.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import { othersUsed, type PartMeant } from './used-of.js';
import { UsedPart } from './used-part.js';

interface Props {
  readonly parts: FieldDay['parts'];
  /** Shown with the items that foresee them. */
  readonly foreseen: readonly PartMeant[];
  readonly kept: readonly KeptRecord[];
  readonly record: Recorder;
}

/** A part that no item of the visit foresaw. */
export function PartForm({ parts, foreseen, kept, record }: Props) {
  const { t, number, sentence } = useWords();
  const [partId, setPartId] = useState('');
  const [quantity, setQuantity] = useState('1');
  const part = parts.find((each) => each.id === partId);
  const isQuantity = /^\d{1,9}(\.\d{1,3})?$/.test(quantity) && Number(quantity) > 0;
  const save = async () => {
    // first of all: a second press finds nothing chosen
    setPartId('');
    setQuantity('1');
    await record(
      { kind: 'part-used', partId: part!.id, name: part!.description, quantity },
      t('kept.part-used', { n: number(Number(quantity), 2), part: sentence(part!.description) }),
    );
  };
  return (
    <details>
      <summary>{t('parts.title')}</summary>
      <div className="stack">
        {othersUsed(foreseen, kept).map((each) => (
          <UsedPart
            key={each.partId ?? each.name}
            part={{ ...each, unit: parts.find(({ id }) => id === each.partId)?.unit ?? 'each' }}
            kept={kept}
            record={record}
          />
        ))}
        <label className="field">
          <span className="label">{t('parts.which')}</span>
          <select value={partId} onChange={(event) => setPartId(event.target.value)}>
            <option value="">{t('parts.choose')}</option>
            {parts.map((each) => (
              <option key={each.id} value={each.id}>
                {each.code} {sentence(each.description)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('parts.quantity')}</span>
          <input inputMode="decimal" value={quantity} onChange={(event) => setQuantity(event.target.value)} />
        </label>
        <button type="button" className="press-quiet" disabled={!part || !isQuantity} onClick={() => void save()}>
          {t('parts.save')}
        </button>
      </div>
    </details>
  );
}
