import type { BacktestRow } from '@deckround/usage';

const PERCENT = new Intl.NumberFormat('en-US', { maximumFractionDigits: 0 });
const percent = (share: number) => `${PERCENT.format(100 * share)} %`;

/** What a manager reads first about the forecasts of one distance. */
export function qualitySentence({ daysAhead, judged, coverage80 }: BacktestRow): string {
  if (coverage80 === null)
    return `No past forecast ${daysAhead} days ahead can be judged yet: more readings are needed.`;
  const forecasts = `${PERCENT.format(judged)} past forecast${judged === 1 ? '' : 's'} ${daysAhead} days ahead`;
  return `Of ${forecasts}, ${percent(coverage80)} fell inside the 80 % range.`;
}

/** The same for all distances: the one at a month, or the one most often judged, and how rules of thumb would have done. */
export function overallSentence(rows: readonly BacktestRow[]): string {
  const month = rows.find((row) => row.daysAhead === 30 && row.judged > 0);
  const row =
    month ?? rows.reduce<BacktestRow | null>((best, each) => (each.judged > (best?.judged ?? 0) ? each : best), null);
  if (row === null) return 'No past forecast can be judged yet: more readings are needed.';
  const below = belowBestRule(row);
  if (below === null) return qualitySentence(row);
  const than = below >= 0 ? `${percent(below)} smaller` : `${percent(-below)} larger`;
  return `${qualitySentence(row)} Their errors were ${than} than those of the best rule of thumb.`;
}

/** 1 − loss / least loss of a rule of thumb; null when nothing was judged or a rule was right to the hour. */
export function belowBestRule({ pinballHours, baselinePinballHours }: BacktestRow): number | null {
  if (pinballHours === null || baselinePinballHours === null) return null;
  const best = Math.min(...Object.values(baselinePinballHours));
  return best > 0 ? 1 - pinballHours / best : null;
}
