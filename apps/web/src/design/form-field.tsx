import { type ReactNode, useId } from 'react';

interface Props {
  readonly label: string;
  /** What is wrong with it, in the reader's words. */
  readonly fault?: string | undefined;
  /** The control, with what ties it to its name and its fault. */
  readonly children: (tied: Tied) => ReactNode;
}

interface Tied {
  readonly id: string;
  readonly 'aria-invalid': boolean;
  readonly 'aria-describedby': string | undefined;
}

/** One field of a form: its name above, what is wrong with it below. */
export function FormField({ label, fault, children }: Props) {
  const id = useId();
  const isWrong = fault !== undefined;
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({ id, 'aria-invalid': isWrong, 'aria-describedby': isWrong ? `${id}-fault` : undefined })}
      {isWrong ? (
        <span id={`${id}-fault`} className="fault">
          {fault}
        </span>
      ) : null}
    </div>
  );
}
