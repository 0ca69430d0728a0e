import { useEffect, useState } from 'react';
import { ChooseFiles } from '../design/choose-files.js';
import type { KeptRecord } from '../offline/field-store.js';
import { shrinkPhoto } from '../offline/shrink-photo.js';
import { useWords } from '../words/words.js';
import style from './technician.module.css';

interface Props {
  readonly kept: readonly KeptRecord[];
  readonly onPhoto: (blob: Blob) => Promise<void>;
}

/** Takes photos and shows those that are still on this device. */
export function PhotoTaker({ kept, onPhoto }: Props) {
  const { t } = useWords();
  const taken = kept.filter((record) => record.fact.kind === 'photo');
  const add = async (files: readonly File[]) => {
    for (const file of files) await onPhoto(await shrinkPhoto(file));
  };
  return (
    <section className="stack">
      <h2>{t('photo.title', { n: taken.length })}</h2>
      <div className={style.shots}>
        {taken.map((record) => (record.photo ? <Shot key={record.id} blob={record.photo} /> : null))}
      </div>
      <ChooseFiles label={t('photo.take')} accept="image/*" camera onChoose={(files) => void add(files)} />
    </section>
  );
}

function Shot({ blob }: { readonly blob: Blob }) {
  const { t } = useWords();
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(blob);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [blob]);
  return address === null ? null : <img src={address} alt={t('photo.alt')} />;
}
