import { z } from 'zod';
import { Id, LocalDate, TimeZone, text, Version } from './primitives.js';

const Units = z.enum(['us', 'metric']).meta({ description: 'us = miles, ft-lb, °F first; metric = km, N·m, °C first' });

export const Shop = z
  .object({
    id: Id,
    version: Version,
    name: z.string(),
    timeZone: z.string(),
    currency: z.string(),
    units: Units,
    today: LocalDate.meta({ description: 'Today by the shop’s clock' }),
    mapTiles: z
      .object({ address: z.string(), credit: z.string() })
      .nullable()
      .meta({ description: 'Streets under the map, as the server is set up; null = outlines alone' }),
    clockShiftDays: z
      .int()
      .meta({ description: 'Days from the world’s calendar to the shop’s: 0, but in a demo shop' }),
    forecastAsOf: LocalDate.nullable().meta({ description: 'Day the newest forecast was reckoned from' }),
    plannedWeekOf: LocalDate.nullable().meta({ description: 'First day of the week planned last' }),
    counts: z
      .object({
        customers: z.int(),
        sites: z.int(),
        machines: z.int(),
        technicians: z.int(),
        readingsSetAside: z.int(),
        openRoadCalls: z.int(),
        toDecide: z.int().meta({ description: 'Wishes of sites without an answer, and late records of the field' }),
      })
      .nullable()
      .meta({ description: 'null for grounds supervisors' }),
  })
  .meta({ id: 'Shop', description: 'The shop itself: its clock, money and units, and how far its work has come' });
export const ShopChanges = z
  .strictObject({
    name: text(200, 1).optional(),
    timeZone: TimeZone.optional(),
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/, 'an ISO 4217 code, like USD')
      .optional(),
    units: Units.optional(),
  })
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'ShopChanges' });
