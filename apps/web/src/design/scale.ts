export type Scale = (value: number) => number;

/** Straight from `domain` to `range`; a domain of one point goes to the middle. */
export function linear([from, to]: readonly [number, number], [low, high]: readonly [number, number]): Scale {
  if (from === to) return () => (low + high) / 2;
  return (value) => low + ((value - from) / (to - from)) * (high - low);
}

/** About `count` round values within [from, to], steps of 1, 2 or 5 times a power of ten. */
export function roundTicks(from: number, to: number, count: number): number[] {
  if (!(to > from)) return [from];
  const rough = (to - from) / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((each) => each * power >= rough)! * power;
  const ticks: number[] = [];
  for (let tick = Math.ceil(from / step) * step; tick <= to + step * 1e-9; tick += step)
    ticks.push(Number(tick.toPrecision(12)));
  return ticks;
}
