import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { classesQuery, serviceItemsQuery } from '../../data/queries.js';
import { useWords } from '../../words/words.js';
import { BadActors } from './bad-actors.js';
import { BearingCalculator } from './bearing-calculator.js';
import { CostRate } from './cost-rate.js';
import { Grades } from './grades.js';
import style from './looking-back.module.css';
import { Proposals } from './proposals.js';
import { replacementQuery } from './queries.js';
import { Survival } from './survival.js';
import { TipSpeed } from './tip-speed.js';
import { twoDigits } from './two-digits.js';

const FIRST_ITEM = 'replace-spindle-bearings';

/** What parts' lives say: when replacing beats waiting, which grade lasts, which machines are past repairing. */
export function LookingBackPage() {
  const words = useWords();
  const { t, number, money, named } = words;
  const rough = (value: number) => `${number(twoDigits(value))} h`;
  const classes = useQuery(classesQuery).data;
  const items = useQuery(serviceItemsQuery).data;
  const [machineClass, setClass] = useState<string | null>(null);
  const [itemCode, setItem] = useState(FIRST_ITEM);
  const shownClass = machineClass ?? classes?.[0]?.code;
  const asked = { itemCode, machineClass: shownClass };
  const age = useQuery({ ...replacementQuery(asked), enabled: shownClass !== undefined });
  if (!classes || !items) return <h1>{t('wait')}</h1>;
  const choices = items.filter((item) => item.machineClass === shownClass && item.code.startsWith('replace-'));
  const { data } = age;
  const sentence =
    data === undefined
      ? t(age.error ? 'back.no-answer' : 'wait')
      : data.bestHours === null
        ? t('back.never', { basis: t(`back.basis.${data.basis}`) })
        : t('back.sentence', {
            best: rough(data.bestHours),
            saves: money(Math.max(0, data.runToFailureCentsPerThousandHours - data.centsPerThousandHours)),
            low: data.lowHours === null ? '–' : rough(data.lowHours),
            high: data.highHours === null ? t('back.open') : rough(data.highHours),
            basis: t(`back.basis.${data.basis}`),
          });
  return (
    <div className="stack">
      <title>{t('back.page')}</title>
      <div className="row">
        <label className="field">
          <span className="label">{t('field.machineClass')}</span>
          <select value={shownClass} onChange={(event) => setClass(event.target.value)}>
            {classes.map((each) => (
              <option key={each.code} value={each.code}>
                {named(`class.${each.code}`, each.name)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('due.work')}</span>
          <select value={itemCode} onChange={(event) => setItem(event.target.value)}>
            {choices.map((item) => (
              <option key={item.code} value={item.code}>
                {words.work(item)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <h1>{sentence}</h1>
      <div className={style.two}>
        {data ? <CostRate age={data} /> : null}
        {shownClass === undefined ? null : <Survival asked={asked} />}
      </div>
      <Grades key={itemCode} itemCode={itemCode} />
      <Proposals />
      <BadActors />
      <BearingCalculator />
      <TipSpeed />
    </div>
  );
}
