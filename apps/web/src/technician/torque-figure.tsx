import type { FieldItem } from '../data/types.js';
import { useWords } from '../words/words.js';
import style from './technician.module.css';

/** A torque in both units, the shop's first; where only the manual can say, that. */
export function TorqueFigure({ torque }: { readonly torque: FieldItem['torques'][number] }) {
  const { t, number, units, sentence } = useWords();
  const span = ([low, high]: readonly number[], unit: string) =>
    low === high ? `${number(low!, 1)} ${unit}` : `${number(low!, 1)}–${number(high!, 1)} ${unit}`;
  if (torque.ftLb === null || torque.nm === null)
    return (
      <p>
        <span>{sentence(torque.what)}</span>: {torque.note ? sentence(torque.note) : t('torque.manual')}
      </p>
    );
  const both = [span(torque.ftLb, 'ft-lb'), span(torque.nm, 'N·m')];
  return (
    <p>
      <span>{sentence(torque.what)}</span> <span className={style.torque}>{both[units === 'us' ? 0 : 1]}</span>{' '}
      <span className="figure">{both[units === 'us' ? 1 : 0]}</span> <span>{sentence(torque.note)}</span>
    </p>
  );
}
