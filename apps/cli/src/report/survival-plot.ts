export interface PlottedStep {
  readonly ageHours: number;
  readonly survival: number;
  readonly low: number;
  readonly high: number;
}

export interface PlottedSeries {
  readonly name: string;
  readonly points: readonly PlottedStep[];
  /** Nothing is known beyond this age, and nothing is drawn. */
  readonly watchedToHours: number;
}

const WIDTH = 64;
const HEIGHT = 16;
const MARKS = ['#', 'o', '+', 'x'];

/** Survival steps of a few groups as plain text: share still working against hours since fitted. */
export function survivalText(series: readonly PlottedSeries[]): string {
  const longest = longestAge(series);
  const rows = Array.from({ length: HEIGHT + 1 }, () => new Array<string>(WIDTH + 1).fill(' '));
  series.forEach(({ points, watchedToHours }, index) => {
    for (let x = 0; x <= WIDTH && (longest * x) / WIDTH <= watchedToHours; x++) {
      const y = Math.round((1 - survivalAt(points, (longest * x) / WIDTH)) * HEIGHT);
      const row = rows[y]!;
      row[x] = row[x] === ' ' ? MARKS[index]! : '*';
    }
  });
  const lines = rows.map((row, y) => {
    const percent = y % 4 === 0 ? `${Math.round(100 * (1 - y / HEIGHT))} %` : '';
    return `${percent.padStart(6)} |${row.join('').trimEnd()}`;
  });
  const end = `${Math.round(longest)} h`;
  return [
    ...lines,
    `${' '.repeat(7)}+${'-'.repeat(WIDTH + 1)}`,
    `${' '.repeat(8)}0${end.padStart(WIDTH)}`,
    ...series.map(({ name }, i) => `        ${MARKS[i]}  ${name}`),
    ...(series.length > 1 ? ['        *  both'] : []),
  ].join('\n');
}

/** The same as a picture, with each group's 90 % interval shaded. */
export function survivalSvg(title: string, series: readonly PlottedSeries[]): string {
  const [width, height, left, top] = [720, 420, 64, 48];
  const longest = longestAge(series);
  const x = (hours: number) => left + ((width - left - 24) * hours) / longest;
  const y = (share: number) => top + (height - top - 56) * (1 - share);
  const colours = ['#1b5e8c', '#b3541e', '#3c7a3c', '#6b4c9a'];
  const steps = (points: readonly PlottedStep[], of: (step: PlottedStep) => number, end: number) => {
    const path = [[x(0), y(1)]];
    let level = y(1);
    for (const point of points) {
      path.push([x(point.ageHours), level]);
      level = y(of(point));
      path.push([x(point.ageHours), level]);
    }
    path.push([x(end), level]);
    return path;
  };
  const line = (path: readonly (readonly number[])[]) =>
    path.map(([px, py]) => `${px!.toFixed(1)},${py!.toFixed(1)}`).join(' ');
  const groups = series.map(({ name, points, watchedToHours }, i) => {
    const band = [
      ...steps(points, (step) => step.high, watchedToHours),
      ...steps(points, (step) => step.low, watchedToHours).toReversed(),
    ];
    return [
      `<polygon points="${line(band)}" fill="${colours[i]}" fill-opacity="0.14"/>`,
      `<polyline points="${line(steps(points, (step) => step.survival, watchedToHours))}" fill="none" stroke="${colours[i]}" stroke-width="2"${i % 2 === 1 ? ' stroke-dasharray="7 4"' : ''}/>`,
      `<text x="${left + 10}" y="${height - 68 - 18 * (series.length - 1 - i)}" fill="${colours[i]}">${escaped(name)}</text>`,
    ].join('\n');
  });
  const grid = [0, 0.25, 0.5, 0.75, 1].map(
    (share) =>
      `<line x1="${left}" x2="${width - 24}" y1="${y(share)}" y2="${y(share)}" stroke="#ccc"/><text x="${left - 8}" y="${y(share) + 4}" text-anchor="end">${Math.round(100 * share)} %</text>`,
  );
  const ages = [0, 0.25, 0.5, 0.75, 1].map(
    (share) =>
      `<text x="${x(longest * share)}" y="${height - 34}" text-anchor="middle">${Math.round(longest * share)}</text>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="13">
<title>${escaped(title)}</title>
<rect width="${width}" height="${height}" fill="#fff"/>
<text x="${left}" y="26" font-size="15">${escaped(title)}</text>
${grid.join('\n')}
${ages.join('\n')}
<text x="${(left + width) / 2}" y="${height - 12}" text-anchor="middle">hours since fitted (shaded: 90 % interval)</text>
${groups.join('\n')}
</svg>
`;
}

/** A round number of hours, a multiple of four steps of 1, 2, 2.5 or 5, that holds all that was watched. */
function longestAge(series: readonly PlottedSeries[]): number {
  const most = Math.max(4, ...series.map(({ watchedToHours }) => watchedToHours));
  const unit = 10 ** Math.floor(Math.log10(most / 4));
  return 4 * unit * [1, 2, 2.5, 5, 10].find((step) => 4 * unit * step >= most)!;
}

function survivalAt(points: readonly PlottedStep[], hours: number): number {
  let survival = 1;
  for (const point of points) {
    if (point.ageHours > hours) break;
    survival = point.survival;
  }
  return survival;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
