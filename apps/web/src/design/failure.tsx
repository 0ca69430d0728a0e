import { describeFailure } from '../app/failed.js';
import { useWords } from '../words/words.js';

/** Why something was not done, in place; nothing while all is well. */
export function Failure({ error }: { readonly error: unknown }) {
  const words = useWords();
  if (!error) return null;
  return (
    <p className="note clay" role="alert">
      {describeFailure(error, words)}
    </p>
  );
}
