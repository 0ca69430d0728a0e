import { useQuery } from '@tanstack/react-query';
import { slotsQuery } from '../../data/queries.js';
import { useWords } from '../../words/words.js';

/** The deck of a machine: the places for parts whose lives are followed. */
export function MachineSlots({ machineId }: { readonly machineId: string }) {
  const { t } = useWords();
  const slots = useQuery(slotsQuery(machineId)).data;
  if (!slots || slots.length === 0) return null;
  return (
    <section className="tight">
      <h2>{t('slots.title')}</h2>
      <ul>
        {slots.map((slot) => {
          const spindle = /^spindle (\d+)$/.exec(slot.name);
          return <li key={slot.id}>{spindle ? t('slot.spindle', { n: Number(spindle[1]) }) : slot.name}</li>;
        })}
      </ul>
    </section>
  );
}
