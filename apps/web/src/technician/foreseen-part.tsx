import { useState } from 'react';
import type { FieldItem } from '../data/types.js';
import type { KeptRecord } from '../offline/field-store.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import { isRecorded, usedOf } from './used-of.js';
import { UsedPart } from './used-part.js';

interface Props {
  readonly part: FieldItem['parts'][number];
  readonly kept: readonly KeptRecord[];
  readonly record: Recorder;
}

/** A part that the item foresees: one press records it, and what is recorded then stands where the press was. */
export function ForeseenPart({ part, kept, record }: Props) {
  const { t, number, sentence } = useWords();
  const { quantity: used } = usedOf(part, kept);
  // Recorded, but not read back yet: a second press would record it twice.
  const [usedAtPress, setUsedAtPress] = useState<number | null>(null);
  if (usedAtPress !== null && usedAtPress !== used) setUsedAtPress(null);
  const told = {
    quantity: t('parts.amount', { n: number(part.quantity, 2), q: part.quantity, unit: part.unit }),
    part: sentence(part.name),
  };
  const use = async () => {
    setUsedAtPress(used);
    const quantity = String(Math.round(part.quantity * 1000) / 1000);
    try {
      await record(
        { kind: 'part-used', partId: part.partId, name: part.name, quantity },
        t('kept.part-used', { n: number(part.quantity, 2), part: part.name }),
      );
    } catch (error) {
      setUsedAtPress(null);
      throw error;
    }
  };
  const button = (label: string) => (
    <button
      type="button"
      className="press-quiet"
      disabled={usedAtPress !== null}
      onClick={(event) => {
        if (event.detail <= 1) void use();
      }}
    >
      {label}
    </button>
  );
  if (!isRecorded(part, kept)) return button(t('parts.use', told));
  return (
    <UsedPart part={part} kept={kept} record={record}>
      {button(t(used === 0 ? 'parts.use' : 'parts.use-more', told))}
    </UsedPart>
  );
}
