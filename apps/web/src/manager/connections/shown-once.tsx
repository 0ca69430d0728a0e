import { useWords } from '../../words/words.js';

/** A secret that is never shown again. */
export function ShownOnce({ secret }: { readonly secret: string }) {
  const { t } = useWords();
  return (
    <label className="field note straw">
      <span className="label">{t('connect.once')}</span>
      <input className="figure" readOnly value={secret} onFocus={(event) => event.target.select()} />
    </label>
  );
}
