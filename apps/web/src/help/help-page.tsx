import { MACHINE_STATES, StateOfMachine } from '../design/state-shape.js';
import type { WordKey } from '../words/en.js';
import { useWords } from '../words/words.js';
import style from './help.module.css';

const KEYS: readonly (readonly [string, WordKey])[] = [
  ['Tab', 'help.key-tab'],
  ['Enter', 'help.key-enter'],
  ['Esc', 'help.key-escape'],
  ['M', 'help.key-move'],
  ['← → ↑ ↓', 'help.key-arrows'],
  ['G', 'help.key-group'],
];

/** What shapes and words mean, which keys do what, and where the figures come from. */
export function HelpPage() {
  const { t } = useWords();
  return (
    <div className={style.help}>
      <title>{t('help.page')}</title>
      <h1>{t('help.title')}</h1>
      <section className="tight">
        <h2>{t('help.states')}</h2>
        {MACHINE_STATES.map((state) => (
          <div key={state} className={style.state}>
            <StateOfMachine state={state} /> <span className="pencil">{t(`help.state.${state}`)}</span>
          </div>
        ))}
      </section>
      <section className="tight">
        <h2>{t('help.strips')}</h2>
        <ul>
          {(['block', 'edge', 'pin', 'answer', 'line', 'hatch', 'double', 'unmade', 'carry'] as const).map((each) => (
            <li key={each}>{t(`help.strip.${each}`)}</li>
          ))}
        </ul>
      </section>
      <section className="tight">
        <h2>{t('help.dates')}</h2>
        <p>{t('help.dates-text')}</p>
      </section>
      <section className="tight">
        <h2>{t('help.keys')}</h2>
        <table>
          <tbody>
            {KEYS.map(([key, word]) => (
              <tr key={key}>
                <th scope="row" className="figure" style={{ whiteSpace: 'nowrap' }}>
                  {key}
                </th>
                <td>{t(word)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section className="tight">
        <h2>{t('help.safety')}</h2>
        <p>{t('safety')}</p>
        <p>{t('help.safety-text')}</p>
      </section>
    </div>
  );
}
