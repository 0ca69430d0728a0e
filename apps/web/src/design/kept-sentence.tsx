import { useWords } from '../words/words.js';

/** A sentence that the service keeps as English text: in the reader's language where it is known, marked where not. */
export function KeptSentence({ text }: { readonly text: string }) {
  const { sentence } = useWords();
  const said = sentence(text);
  return <span lang={said === text ? 'en' : undefined}>{said}</span>;
}
