export const TIP_SPEED_LIMIT = {
  feetPerMinute: 19_000,
  metresPerSecond: 96.52,
  source:
    'ANSI B71.1 (consumer) and B71.4 (commercial) mowers: 19,000 ft/min; through secondary sources, the standards’ own text not seen',
} as const;

export interface TipSpeedCheck {
  readonly feetPerMinute: number;
  readonly metresPerSecond: number;
  readonly isOver: boolean;
  /** Highest spindle speed that keeps the limit. */
  readonly highestRpm: number;
  readonly warning: string | null;
}

/** v = π L n / 12 ft/min for a blade of L inches tip to tip at n r/min; 1 ft/min = 0.00508 m/s. */
export function checkTipSpeed(bladeInches: number, rpm: number): TipSpeedCheck {
  const feetPerMinute = (Math.PI * bladeInches * rpm) / 12;
  const limit = TIP_SPEED_LIMIT.feetPerMinute;
  const isOver = feetPerMinute > limit;
  return {
    feetPerMinute,
    metresPerSecond: feetPerMinute * 0.00508,
    isOver,
    highestRpm: (12 * limit) / (Math.PI * bladeInches),
    warning: isOver
      ? `Blade tips run at ${Math.round(feetPerMinute).toLocaleString('en-US')} ft/min, above the limit of 19,000 ft/min: a broken blade or a stone flies farther than guards are made for. Refit the pulleys, blade or engine speed that the machine's manual names.`
      : null,
  };
}
