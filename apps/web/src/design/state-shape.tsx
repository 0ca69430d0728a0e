import { useWords } from '../words/words.js';

export const MACHINE_STATES = ['ready', 'service-soon', 'overdue', 'stopgap', 'down', 'in-our-hands'] as const;
export type MachineState = (typeof MACHINE_STATES)[number];

const SHAPES: Readonly<Record<MachineState, React.ReactNode>> = {
  ready: <circle cx="8" cy="8" r="6" fill="currentColor" />,
  'service-soon': (
    <>
      <circle cx="8" cy="8" r="6" />
      <path d="M8 2a6 6 0 0 0 0 12z" fill="currentColor" stroke="none" />
    </>
  ),
  overdue: <path d="M8 2.2 14.4 13.6H1.6z" strokeLinejoin="round" />,
  stopgap: <path d="M8 8V2a6 6 0 1 0 6 6z" fill="currentColor" strokeLinejoin="round" />,
  down: <path d="M2.5 2.5h11v11h-11zM2.5 2.5l11 11M13.5 2.5l-11 11" />,
  'in-our-hands': <path d="M8 1.5 14.5 8 8 14.5 1.5 8z" strokeLinejoin="round" />,
};

/** A machine's state as shape and word; colour only repeats what they say. */
export function StateOfMachine({ state, detail }: { readonly state: MachineState; readonly detail?: string }) {
  const { t } = useWords();
  const hue =
    state === 'overdue' || state === 'down' ? 'var(--clay)' : state === 'ready' ? 'var(--ink)' : 'var(--straw)';
  return (
    <span className="row" style={{ gap: 6, display: 'inline-flex', flexWrap: 'nowrap' }}>
      <StateShape state={state} hue={hue} />
      <span>
        {t(`state.${state}`)}
        {detail === undefined ? null : <span className="pencil"> {detail}</span>}
      </span>
    </span>
  );
}

export function StateShape({ state, hue = 'currentColor' }: { readonly state: MachineState; readonly hue?: string }) {
  return (
    <svg
      width="16"
      height="16"
      viewBox="0 0 16 16"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
      aria-hidden="true"
      style={{ color: hue, flex: 'none' }}
    >
      {SHAPES[state]}
    </svg>
  );
}
