import {
  CumulativeQuery,
  MachineAdvice,
  MachineRecord,
  MachineRecordQuery,
  MachineReplacementQuery,
  MeanCumulative,
  pageOf,
} from '@deckround/contracts';
import { adviseMachine, fleetCumulative, fleetPowerLaw, type MachineRecord as Known } from '@deckround/learning';
import { DomainError } from '@deckround/platform';
import type { Register } from '@deckround/register';
import { Controller, Get, Inject, Param, Query } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { listPage } from './list-page.js';
import { ShopLives } from './shop-lives.js';

const Z90 = 1.6448536;
/** Points of a mean cumulative function that are sent at most. */
const MOST_POINTS = 400;
/** Hours a machine is taken to run next year when its record is too short to tell. Own choice. */
const USUAL_YEAR = 250;

@ApiTags('Reliability')
@ApiBearerAuth()
@Controller('v1/reliability')
export class MachineRecordsController {
  constructor(@Inject(ShopLives) private readonly shopLives: ShopLives) {}

  @Get('machines')
  @Allow(['manager', 'technician'])
  @Answers(200, pageOf(MachineRecord, 'MachineRecord'), 'Machines by repair cost per hour, the dearest first')
  async machines(
    @Caller() actor: Actor,
    @Query({ schema: MachineRecordQuery }) query: z.infer<typeof MachineRecordQuery>,
  ) {
    const { records, register, asOf } = await this.shopLives.of(actor.shopId);
    const inUse = records.filter((each) => each.retiredOn === null || each.retiredOn > asOf);
    const chosen = inScope(inUse, query).toSorted(
      (a, b) => (b.centsPerHour ?? -1) - (a.centsPerHour ?? -1) || (a.machineId < b.machineId ? -1 : 1),
    );
    return listPage(chosen, query, (each) => each.machineId, viewsOf(register));
  }

  @Get('machines/:id')
  @Allow(['manager', 'technician'])
  @Answers(200, MachineAdvice, 'One machine’s repairs, their trend, and whether it is past repairing')
  async machine(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Query({ schema: MachineReplacementQuery }) query: z.infer<typeof MachineReplacementQuery>,
  ) {
    const { records, register } = await this.shopLives.of(actor.shopId);
    const record = records.find((each) => each.machineId === id);
    if (!record)
      throw new DomainError('not-found', 'There is no such machine, or it has no reading yet: record its hours first.');
    const hoursNextYear = query.hoursNextYear ?? USUAL_YEAR;
    const advice =
      query.newPriceCents === undefined
        ? null
        : adviseMachine(record, records, { ...query, newPriceCents: query.newPriceCents, hoursNextYear });
    return {
      ...viewsOf(register)(record),
      repairs: [...record.repairs],
      advice: advice && {
        keepCentsPerHour: advice.keepPerHour,
        keepLowCentsPerHour: advice.keepLow,
        keepHighCentsPerHour: advice.keepHigh,
        replaceCentsPerHour: advice.replacePerHour,
        breakEvenRepairCentsNextYear: advice.breakEvenRepairsNextYear,
        expectedRepairCentsNextYear: advice.expectedRepairsNextYear,
        verdict: advice.verdict,
        sentence: advice.sentence,
      },
      assumptions: [
        'Only unplanned repairs count; each costs what its service item costs after a failure.',
        'A new machine needs repairs at the mean rate of its class in this shop and is worth nothing at the end of its life.',
        `It runs ${hoursNextYear} h next year${query.hoursNextYear === undefined ? ', assumed' : ''}.`,
      ],
    };
  }

  @Get('mean-cumulative')
  @Allow(['manager', 'technician'])
  @Answers(200, MeanCumulative, 'Mean repairs or cents per machine by machine hours')
  async cumulative(@Caller() actor: Actor, @Query({ schema: CumulativeQuery }) query: z.infer<typeof CumulativeQuery>) {
    const { records } = await this.shopLives.of(actor.shopId);
    const chosen = inScope(records, query);
    const steps = fleetCumulative(chosen, query.of);
    const law = fleetPowerLaw(chosen);
    const stride = Math.max(1, Math.ceil(steps.length / MOST_POINTS));
    return {
      of: query.of,
      machines: chosen.length,
      points: steps
        .filter((_, i) => i % stride === 0 || i === steps.length - 1)
        .map((step) => ({
          ageHours: step.age,
          atRisk: step.atRisk,
          mean: step.mean,
          low: Math.max(0, step.mean - Z90 * step.se),
          high: step.mean + Z90 * step.se,
        })),
      powerLaw: law && { exponent: law.beta, events: law.events },
      statement:
        law === null
          ? 'No unplanned repair is on record.'
          : `${law.events} repairs on ${chosen.length} machines; over the hours watched they grow with exponent ${law.beta.toFixed(2)} (1 = steady, above 1 = wearing out). Machines are counted from their age when taken on.`,
    };
  }
}

function inScope(
  records: readonly Known[],
  { machineClass, siteId }: { machineClass?: string | undefined; siteId?: string | undefined },
): Known[] {
  return records.filter(
    (each) =>
      (machineClass === undefined || each.machineClass === machineClass) &&
      (siteId === undefined || each.siteId === siteId),
  );
}

function viewsOf({ machines, sites }: Register) {
  const codes = new Map(machines.map(({ id, code }) => [id, code]));
  const names = new Map(sites.map(({ id, name }) => [id, name]));
  return (each: Known) => ({
    machineId: each.machineId,
    machineCode: codes.get(each.machineId) ?? '',
    machineClass: each.machineClass,
    siteId: each.siteId,
    siteName: names.get(each.siteId) ?? '',
    retiredOn: each.retiredOn,
    fromHours: each.fromHours,
    toHours: each.toHours,
    repairCount: each.repairs.length,
    repairCents: each.repairCents,
    centsPerHour: each.centsPerHour,
    trend: each.trend.words,
    laplace: each.trend.laplace,
    laplaceP: each.trend.laplaceP,
    milHdbkP: each.trend.milHdbkP,
  });
}
