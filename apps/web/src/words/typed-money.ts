/** Minor units of a currency as somebody types them: 12840 with two digits is `128.40`, with none `12840`. */
export function typedMoney(minorUnits: number, digits: number): string {
  return (minorUnits / 10 ** digits).toFixed(digits);
}

/** Back from what was typed, with a point or a comma, to the nearest whole minor unit. */
export function minorUnits(typed: string, digits: number): number {
  return Math.round(Number(typed.trim().replace(',', '.')) * 10 ** digits);
}

/** What a field of an amount takes, for its `pattern`. */
export function moneyPattern(digits: number): string {
  return digits === 0 ? '\\d{1,9}' : `\\d{1,7}([.,]\\d{1,${digits}})?`;
}
