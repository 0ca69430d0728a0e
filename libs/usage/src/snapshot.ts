import { z } from 'zod';

const localDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const localDateTime = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}$/);

export const MachineForUsage = z.object({
  id: z.string(),
  siteId: z.string(),
  machineClass: z.string(),
  /** Degrees; tells the hemisphere, and so the season, when the shop has not seen a whole year yet. */
  latitude: z.number().nullable(),
  longitude: z.number().nullable(),
  inServiceOn: localDate.nullable(),
  /** Hours at which its meter starts again from zero; absent or null = not told. */
  meterRolloverHours: z.number().positive().nullable().optional(),
  /** Where it stood before, in order of time, each until the day it left. */
  formerSites: z
    .array(
      z.object({
        siteId: z.string(),
        latitude: z.number().nullable(),
        longitude: z.number().nullable(),
        until: localDate,
      }),
    )
    .optional(),
});
export type MachineForUsage = z.infer<typeof MachineForUsage>;

export const Reading = z.object({
  id: z.string(),
  machineId: z.string(),
  /** Wall clock of the site. */
  readAt: localDateTime,
  /** What the meter showed, hours. */
  hours: z.number(),
  source: z.string(),
  /** A person looked at it and says that it is right: it is believed, however odd. */
  confirmed: z.boolean().optional(),
});
export type Reading = z.infer<typeof Reading>;

export const MeterChange = z.object({
  machineId: z.string(),
  changedAt: localDate,
  /** What the old meter showed last, hours. */
  oldHours: z.number(),
  /** What the new meter showed first, hours. */
  newHours: z.number(),
});
export type MeterChange = z.infer<typeof MeterChange>;

/** One day's weather, observed or foreseen by whoever keeps the file. */
export const WeatherDay = z.object({
  /** null = the whole region. */
  siteId: z.string().nullable(),
  date: localDate,
  lowC: z.number(),
  highC: z.number(),
  rainMm: z.number().min(0),
});
export type WeatherDay = z.infer<typeof WeatherDay>;

/** Everything the forecaster needs, in one document that can be mailed, replayed and tested. */
export const UsageSnapshot = z.object({
  version: z.literal(1),
  /** Forecast origin: nothing read after the end of this local day is used. */
  asOf: localDate,
  /** Days projected past `asOf`. */
  horizonDays: z.int().min(1).max(400),
  machines: z.array(MachineForUsage),
  /** Any order. */
  readings: z.array(Reading),
  meterChanges: z.array(MeterChange),
  /** Any order; absent = hours are explained by the season alone. */
  weather: z.array(WeatherDay).optional(),
});
export type UsageSnapshot = z.infer<typeof UsageSnapshot>;
