import type { KeptRecord } from '../offline/field-store.js';
import { faultSaid } from '../words/said.js';
import { useWords } from '../words/words.js';

/** Why the service did not take a record, and what is wrong with which of its fields. */
export function WhyRefused({ record }: { readonly record: KeptRecord }) {
  const words = useWords();
  const { refusal, faults } = record;
  return (
    <>
      <p>{words.sentence(refusal ?? '')}</p>
      {faults?.length ? <p>{faults.map((fault) => faultSaid(fault, words)).join('; ')}</p> : null}
    </>
  );
}
