import type { ReactNode } from 'react';
import { Scrolling } from './scrolling.js';

export interface Column<R> {
  readonly head: string;
  readonly cell: (row: R) => ReactNode;
  readonly isNumber?: boolean;
  /** Its head is only for those who hear the page. */
  readonly isHeadUnseen?: boolean;
  /** On a phone: its head is left out, since what stands there says what it is. */
  readonly isBare?: boolean;
  /** On a phone: it has a line of its own. */
  readonly isLine?: boolean;
}

interface Props<R> {
  readonly label: string;
  /** The first one names the row. */
  readonly columns: readonly Column<R>[];
  readonly rows: readonly R[];
  readonly keyOf: (row: R) => string;
}

/** A list that is a table at the desk, and rows below each other on a phone, each figure with its head before it. */
export function StackedTable<R>({ label, columns, rows, keyOf }: Props<R>) {
  return (
    <Scrolling label={label}>
      <table className="stacked">
        <thead>
          <tr>
            {columns.map(({ head, isNumber, isHeadUnseen }) => (
              <th key={head} scope="col" className={isNumber ? 'number' : undefined}>
                {isHeadUnseen ? <span className="unseen">{head}</span> : head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={keyOf(row)}>
              {columns.map(({ head, cell, isNumber, isBare, isLine }, index) => {
                const Cell = index === 0 ? 'th' : 'td';
                return (
                  <Cell
                    key={head}
                    scope={index === 0 ? 'row' : undefined}
                    className={isNumber ? 'number' : undefined}
                    data-head={isBare ? undefined : head}
                    data-whole={isLine}
                  >
                    {cell(row)}
                  </Cell>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Scrolling>
  );
}
