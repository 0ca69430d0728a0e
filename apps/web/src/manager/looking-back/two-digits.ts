/** Lives are known to two digits at best: more would be a precision that nobody has. */
export const twoDigits = (value: number): number => Number(value.toPrecision(2));
