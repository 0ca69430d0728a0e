import { useQuery } from '@tanstack/react-query';
import { stopgapsQuery } from '../../data/queries.js';
import type { Stopgap } from '../../data/types.js';
import { stopgapLimit } from '../../words/stopgap-limit.js';
import { useWords } from '../../words/words.js';
import { CloseStopgap } from './close-stopgap.js';
import { RenewStopgap } from './renew-stopgap.js';
import style from './stopgaps.module.css';

interface Props {
  readonly machineId: string;
  readonly today: string;
}

/** The temporary repairs that hold a machine, each with its limit, and what the desk may decide about it. */
export function OpenStopgaps({ machineId, today }: Props) {
  const { t } = useWords();
  const open = (useQuery(stopgapsQuery(machineId)).data ?? []).filter(({ closedOn }) => closedOn === null);
  if (open.length === 0) return null;
  return (
    <section className="stack" id="stopgaps">
      <h2>{t('stopgap.open')}</h2>
      <ul className={style.list}>
        {open.map((stopgap) => (
          <li key={stopgap.id} className="note straw stack">
            <Held stopgap={stopgap} />
            <RenewStopgap key={`renew ${stopgap.version}`} id={stopgap.id} today={today} />
            <CloseStopgap key={`close ${stopgap.version}`} id={stopgap.id} today={today} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Held({ stopgap }: { readonly stopgap: Stopgap }) {
  const words = useWords();
  const { t, dayOfYear } = words;
  const { description, madeOn, renewedOn, limitHours, limitOn, partExpectedOn } = stopgap;
  const lines = [
    t('stopgap.made', { day: dayOfYear(madeOn) }),
    stopgapLimit({ limitHours, limitOn, countedFrom: renewedOn ?? madeOn }, words, dayOfYear),
    partExpectedOn === null ? null : t('stopgap.part-on', { day: dayOfYear(partExpectedOn) }),
  ];
  return (
    <p>
      <strong>{description}</strong> <span className="pencil">{lines.filter(Boolean).join(' · ')}</span>
    </p>
  );
}
