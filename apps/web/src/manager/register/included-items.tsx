import { useQuery } from '@tanstack/react-query';
import { serviceItemsQuery } from '../../data/queries.js';
import { useWords } from '../../words/words.js';
import style from './register.module.css';

interface Included {
  readonly itemCode: string;
  readonly included: boolean;
  readonly yearlyAllowance: number | null;
}

interface Props {
  readonly label: string;
  readonly value: readonly Included[];
  readonly isFixed: boolean;
  readonly onChange: (value: Included[]) => void;
}

/** Which kinds of work an agreement includes: to be ticked, or what was ticked where nothing can be changed. */
export function IncludedItems({ label, value, isFixed, onChange }: Props) {
  const words = useWords();
  const items = useQuery(serviceItemsQuery).data ?? [];
  const titles = new Map(items.map((item) => [item.code, item.title]));
  if (isFixed)
    return (
      <section className={style.windows}>
        <h2>{label}</h2>
        <ul>
          {value
            .filter(({ included }) => included)
            .map(({ itemCode, yearlyAllowance }) => (
              <li key={itemCode}>
                {words.work({ code: itemCode, title: titles.get(itemCode) ?? itemCode })}
                {yearlyAllowance === null ? null : (
                  <span className="pencil"> {words.t('agreement.allowance', { n: yearlyAllowance })}</span>
                )}
              </li>
            ))}
        </ul>
      </section>
    );
  return (
    <fieldset className={style.windows}>
      <legend className="small">{label}</legend>
      {[...titles].map(([code, title]) => (
        <label key={code} className="check">
          <input
            type="checkbox"
            checked={value.some((each) => each.itemCode === code && each.included)}
            onChange={(event) =>
              onChange(
                event.target.checked
                  ? [...value, { itemCode: code, included: true, yearlyAllowance: null }]
                  : value.filter((each) => each.itemCode !== code),
              )
            }
          />
          {words.work({ code, title })}
        </label>
      ))}
    </fieldset>
  );
}
