import { forecastDueWith, type UpkeepSnapshot } from '@deckround/upkeep';
import { fitUsage, forecastUsage } from '@deckround/usage';
import type { ForecastResult } from './messages.js';

/** Usage of every machine and the due dates that rest on it, from one fit. */
export function computeForecast(snapshot: UpkeepSnapshot): ForecastResult {
  const usage = forecastUsage(fitUsage(snapshot.usage));
  return {
    due: forecastDueWith(usage, snapshot),
    usage: [...usage.machines.values()].map((machine) => ({
      machineId: machine.machineId,
      lifetimeHoursNow: machine.lifetimeHoursNow,
      hoursPerWeek: machine.hoursPerWeek,
      ...machine.quantiles(),
    })),
  };
}
