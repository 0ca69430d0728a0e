interface Line {
  readonly quantity: string;
  readonly unitCode: string;
  readonly priceBase: string;
}

/** Whole minutes of a line that charges time, counted in hours or in minutes; null for any other line. */
export function minutesOf({ quantity, unitCode }: Pick<Line, 'quantity' | 'unitCode'>): number | null {
  if (unitCode !== 'HUR' && unitCode !== 'MIN') return null;
  // A decimal of hours is no binary number: what is off by less than a thousandth is whole.
  const minutes = Number(quantity) * (unitCode === 'HUR' ? 60 : 1);
  const whole = Math.round(minutes);
  return Math.abs(minutes - whole) < 0.001 ? whole : null;
}

export function isByTheHour({ priceBase, unitCode }: Pick<Line, 'priceBase' | 'unitCode'>): boolean {
  return (unitCode === 'HUR' && priceBase === '1') || (unitCode === 'MIN' && priceBase === '60');
}
