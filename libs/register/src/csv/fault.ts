import type { Clause } from '@deckround/planning';

/** One thing wrong in a register folder: where it is and what to do. */
export interface RegisterFault {
  readonly file: string;
  /** 1 = the header; 0 = the file as a whole. */
  readonly line: number;
  readonly column: string | null;
  readonly message: string;
  /** The message for those who word it in another language; null where a program that reads files said it. */
  readonly clause: Clause | null;
}

export function describeFault({ file, line, column, message }: RegisterFault): string {
  const place = [file, line > 0 ? `line ${line}` : null, column ? `column ${column}` : null].filter(Boolean).join(', ');
  return `${place}: ${message}`;
}

/** Keeps the first faults whole and counts the rest: a file of a million bad lines must not become a million messages. */
export class FaultList {
  readonly kept: RegisterFault[] = [];
  private counted = 0;

  constructor(private readonly limit = 200) {}

  add(fault: RegisterFault): void {
    this.counted += 1;
    if (this.kept.length < this.limit) this.kept.push(fault);
  }

  get total(): number {
    return this.counted;
  }
}
