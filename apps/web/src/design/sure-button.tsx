import { useState } from 'react';

interface Props {
  readonly label: string;
  /** Says what is lost; pressed again, it is done. */
  readonly sureLabel: string;
  readonly isPending: boolean;
  readonly onSure: () => void;
}

/** Takes something away that does not come back: by two presses, of which a double click is only one. */
export function SureButton({ label, sureLabel, isPending, onSure }: Props) {
  const [isSure, setSure] = useState(false);
  return (
    <button
      type="button"
      className="press-plain"
      disabled={isPending}
      onClick={(event) => {
        if (event.detail > 1) return;
        if (isSure) onSure();
        setSure(!isSure);
      }}
    >
      {isSure ? sureLabel : label}
    </button>
  );
}
