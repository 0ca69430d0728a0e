import {
  BearingLifeAnswer,
  BearingLifeQuery,
  InspectionInterval,
  InspectionQuery,
  pageOf,
  SpeedCheck,
  SpeedCheckCreate,
  SpeedCheckQuery,
} from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import {
  BEARINGS,
  bearingLife,
  bearingLoads,
  bearingOf,
  beltPull,
  bestByCost,
  CONTAMINATION,
  checkTipSpeed,
  imbalanceForce,
  inspectionCostRate,
  sealOf,
  shareFailing,
  spindleRpm,
  systemLife,
  TIP_SPEED_LIMIT,
} from '@deckround/reliability';
import type { Prisma, Store } from '@deckround/store';
import { Body, Controller, Get, Inject, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { requireMachines } from '../field-work/require-machine.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';

/** Calculators: what a bearing should live, and whether blade tips run too fast. */
@ApiTags('Reliability')
@ApiBearerAuth()
@Controller('v1/reliability')
export class BearingsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get('bearing-life')
  @Allow(['manager', 'technician'])
  @Answers(200, BearingLifeAnswer, 'ISO 281 rating life of a spindle’s two bearings')
  bearingLife(@Query({ schema: BearingLifeQuery }) query: z.infer<typeof BearingLifeQuery>) {
    const known = bearingOf(query.designation);
    if (!known)
      throw new DomainError(
        'invalid-input',
        `"${query.designation}" is not in our table of bearings: use one of ${BEARINGS.map((each) => each.designation).join(', ')}, with any suffix.`,
      );
    const bearing = {
      ...known,
      ratingN: query.ratingN ?? known.ratingN,
      staticRatingN: query.staticRatingN ?? known.staticRatingN,
    };
    const rpm = spindleRpm(query.engineRpm, query.drivePulley, query.drivenPulley);
    const beltN = beltPull(query.strandTensionN, query.wrapDegrees);
    const imbalanceN = imbalanceForce(query.imbalanceGramMm, rpm);
    const loads = bearingLoads(beltN, imbalanceN, query);
    if (loads.upperN + loads.lowerN + query.axialN <= 0)
      throw new DomainError(
        'invalid-input',
        'Without any load rating life has no end: give a tension or an imbalance.',
      );
    const of = (radialN: number) => {
      const life = bearingLife(bearing, {
        radialN: Math.max(1, radialN),
        axialN: query.axialN,
        rpm,
        reliabilityPercent: query.reliabilityPercent,
        contamination: query.contamination,
      });
      const { load, l10Hours, hoursAtReliability, adjustedLowHours, adjustedHighHours, notes } = life;
      return {
        radialN,
        equivalentN: load.loadN,
        l10Hours,
        hoursAtReliability,
        adjustedLowHours,
        adjustedHighHours,
        notes: [...notes],
      };
    };
    const [upper, lower] = [of(loads.upperN), of(loads.lowerN)];
    const both = (pick: (one: typeof upper) => number) => systemLife([pick(upper), pick(lower)]);
    return {
      designation: bearing.designation,
      boreMm: bearing.boreMm,
      outerMm: bearing.outerMm,
      widthMm: bearing.widthMm,
      ratingN: bearing.ratingN,
      staticRatingN: bearing.staticRatingN,
      seal: sealOf(query.designation),
      spindleRpm: rpm,
      beltN,
      imbalanceN,
      upper,
      lower,
      bothL10Hours: both((one) => one.l10Hours),
      bothAdjustedLowHours: both((one) => one.adjustedLowHours),
      bothAdjustedHighHours: both((one) => one.adjustedHighHours),
      contaminationWords: CONTAMINATION[query.contamination].words,
      sources: [
        'Life and load factors: ISO 281 through bearing makers’ pages; the standard’s own text not seen.',
        'Dimensions: ISO 15; ratings: one maker’s 2018 catalogue. Ratings differ by maker: enter yours.',
        'Contamination is a stated range, from memory, not a measurement.',
      ],
    };
  }

  @Get('inspection-interval')
  @Allow(['manager', 'technician'])
  @Answers(200, InspectionInterval, 'How often to look for defects that announce a failure')
  inspection(@Query({ schema: InspectionQuery }) query: z.infer<typeof InspectionQuery>) {
    const model = { defectRate: query.defectsPerThousandHours / 1000, delayRate: 1 / query.meanDelayHours };
    const costs = { failure: query.failureCents, found: query.foundCents, inspection: query.inspectionCents };
    const best = bestByCost(model, costs);
    const thousand = (rate: number) => Math.round(rate * 100_000) / 100;
    const without = model.defectRate * costs.failure;
    const pays = best.interval !== null && best.rate < without;
    const middle = best.interval ?? query.meanDelayHours;
    return {
      bestHours: pays ? best.interval : null,
      centsPerThousandHours: thousand(pays ? best.rate : without),
      withoutInspectionCentsPerThousandHours: thousand(without),
      shareFailing: pays ? shareFailing(model.delayRate, best.interval!) : null,
      curve: Array.from({ length: 41 }, (_, i) => {
        const intervalHours = middle * 10 ** ((i - 20) / 20);
        return { intervalHours, centsPerThousandHours: thousand(inspectionCostRate(model, costs, intervalHours)) };
      }),
      sentence: pays
        ? `Look every ${Math.round(best.interval!)} h: it costs ${Math.round(100 * (1 - best.rate / without))} % less than waiting for failures.`
        : 'Looking never pays at these costs: failures are cheaper than finding them.',
      assumptions: [
        'Defects arise at a steady rate, become failures after an exponential delay, and every look finds what is there.',
        'Delay-time model after Christer & Waller 1984.',
      ],
    };
  }

  @Post('speed-checks')
  @Allow(['manager', 'technician'])
  @Creates(SpeedCheck, 'Checks blade tip speed and records it; a warning blocks nothing')
  check(
    @Caller() actor: Actor,
    @Body({ schema: SpeedCheckCreate }) body: z.infer<typeof SpeedCheckCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      await requireMachines(tx, actor, [body.machineId]);
      const rpm = Math.round(spindleRpm(body.engineRpm, body.drivePulley, body.drivenPulley) * 10) / 10;
      if (rpm > 100_000 || rpm < 1)
        throw new DomainError(
          'invalid-input',
          `Those pulleys give ${rpm} r/min at the spindle: check their diameters.`,
        );
      const { feetPerMinute, isOver } = checkTipSpeed(body.bladeInches, rpm);
      const row = await tx.speedCheck.create({
        data: {
          shopId: actor.shopId,
          machineId: body.machineId,
          checkedAt: this.clock.now(),
          checkedBy: actor.kind === 'person' ? actor.id : null,
          bladeInches: body.bladeInches,
          spindleRpm: rpm,
          feetPerMinute: Math.round(feetPerMinute * 10) / 10,
          limitFeetPerMinute: TIP_SPEED_LIMIT.feetPerMinute,
          isOver,
          note: body.note,
        },
      });
      return checkView(row);
    });
  }

  @Get('speed-checks')
  @Allow(['manager', 'technician'])
  @Answers(200, pageOf(SpeedCheck, 'SpeedCheck'), 'Blade tip speeds that were checked')
  async checks(@Caller() actor: Actor, @Query({ schema: SpeedCheckQuery }) query: z.infer<typeof SpeedCheckQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.speedCheck.findMany({
        where: {
          AND: [
            query.machineId === undefined ? {} : { machineId: query.machineId },
            afterCursor('checkedAt', readCursor(query.cursor), (key) => new Date(key)),
          ],
        },
        orderBy: [{ checkedAt: 'asc' }, { id: 'asc' }],
        take: query.limit + 1,
      }),
    );
    return toPage(rows, query.limit, (row) => row.checkedAt.toISOString(), checkView);
  }
}

function checkView(row: Prisma.SpeedCheckGetPayload<object>) {
  const [bladeInches, rpm] = [Number(row.bladeInches), Number(row.spindleRpm)];
  const { highestRpm, warning } = checkTipSpeed(bladeInches, rpm);
  return {
    id: row.id,
    machineId: row.machineId,
    checkedAt: row.checkedAt.toISOString(),
    bladeInches,
    spindleRpm: rpm,
    feetPerMinute: Number(row.feetPerMinute),
    limitFeetPerMinute: Number(row.limitFeetPerMinute),
    isOver: row.isOver,
    highestRpm,
    warning,
    limitSource: TIP_SPEED_LIMIT.source,
    note: row.note,
  };
}
