/** A way of getting a number wrong, with the number that was probably meant. */
export interface Misreading {
  readonly code: 'slipped-decimal' | 'swapped-digits';
  /** What the meter probably showed, hours. */
  readonly meant: number;
  /** How far `meant` may be off because the last digits were lost or retyped, hours. */
  readonly slack: number;
}

/**
 * What a person may have meant who wrote down `hours`: the decimal point one or two places off, or two neighbouring
 * digits exchanged (a leading zero counts, so 17 may be 107).
 *
 * @param hours what was written, hours, not negative
 * @source common practice, no source: transposed digits and slipped points are the usual keying errors
 */
export function misreadingsOf(hours: number): Misreading[] {
  const found: Misreading[] = [];
  for (const factor of [0.1, 10, 0.01, 100]) {
    found.push({ code: 'slipped-decimal', meant: tenths(hours * factor), slack: Math.max(0.15, factor * 0.06) });
  }
  const whole = Math.floor(hours);
  const fraction = hours - whole;
  const digits = `0${whole}`;
  for (let at = 0; at + 1 < digits.length; at++) {
    if (digits[at] === digits[at + 1]) continue;
    const swapped = +(digits.slice(0, at) + digits[at + 1] + digits[at] + digits.slice(at + 2));
    found.push({ code: 'swapped-digits', meant: tenths(swapped + fraction), slack: 1 });
  }
  return found;
}

function tenths(hours: number): number {
  return Math.round(hours * 10) / 10;
}
