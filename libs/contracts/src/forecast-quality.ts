import { z } from 'zod';
import { Instant, LocalDate } from './primitives.js';

const Share = z.number().min(0).max(1).nullable();
const HoursLost = z.number().min(0).nullable().meta({ description: 'Mean pinball loss, hours' });

export const ForecastQualityRow = z
  .object({
    daysAhead: z.int(),
    judged: z.int().meta({ description: 'Past forecasts that later readings have judged; 0 leaves the rest null' }),
    coverage50: Share.meta({ description: 'Share of outcomes inside the 50 % range' }),
    coverage80: Share,
    coverage95: Share,
    pinballHours: HoursLost,
    lastTwoReadingsHours: HoursLost,
    wholeLifeHours: HoursLost,
    lastYearHours: HoursLost,
    belowBestRule: z
      .number()
      .nullable()
      .meta({ description: 'Share by which our loss is below that of the best of the three rules of thumb' }),
    biasHours: z.number().nullable().meta({ description: 'Mean of outcome minus middle forecast, hours' }),
    sentence: z.string(),
  })
  .meta({ id: 'ForecastQualityRow' });
export const ForecastQuality = z
  .object({ asOf: LocalDate.nullable(), computedAt: Instant, sentence: z.string(), rows: z.array(ForecastQualityRow) })
  .meta({
    id: 'ForecastQuality',
    description:
      'How good past forecasts were: at dates gone by, forecast from what was known then and held against later readings',
  });
