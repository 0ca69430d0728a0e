import type { ReactNode } from 'react';
import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';

interface Props {
  readonly label: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly ReactNode[])[];
}

/** The figures behind a chart, for whoever would rather read. */
export function Figures({ label, heads, rows }: Props) {
  const { t } = useWords();
  return (
    <details>
      <summary>{t('back.as-table')}</summary>
      <Scrolling label={label}>
        <table>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col" className="number">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={String(row[0])}>
                {row.map((cell, index) => (
                  <td key={heads[index]} className="number">
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
    </details>
  );
}

/** What the service says about how it got there. */
export function Assumptions({ statement, lines }: { readonly statement: string; readonly lines: readonly string[] }) {
  const { t, sentence } = useWords();
  return (
    <details className="small">
      <summary>{t('back.assumptions')}</summary>
      <div>
        <p>{sentence(statement)}</p>
        <ul>
          {lines.map((line) => (
            <li key={line}>{sentence(line)}</li>
          ))}
        </ul>
      </div>
    </details>
  );
}
