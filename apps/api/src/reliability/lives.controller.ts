import {
  BlockReplacement,
  BlockReplacementQuery,
  GradeComparison,
  GradeQuery,
  LifeFit,
  LifeGroupQuery,
  LifeQuery,
  PartLife,
  PartsOnRecord,
  PartsOnRecordQuery,
  pageOf,
  ReplacementAge,
  ReplacementAgeQuery,
  StopgapRisk,
  StopgapRiskQuery,
} from '@deckround/contracts';
import {
  answerFit,
  assumptionsOf,
  beliefOfItem,
  believe,
  type ComponentLife,
  compareParts,
  groupBy,
  partsOnRecord,
  replacementCosts,
  selectLives,
  statedPrior,
} from '@deckround/learning';
import { DomainError } from '@deckround/platform';
import { adviseAge, opportunityThreshold, stopgapRisk } from '@deckround/reliability';
import { Controller, Get, Inject, Query } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { blockAnswer } from './block-answer.js';
import { listPage } from './list-page.js';
import { requireReplacingItem, ShopLives } from './shop-lives.js';

@ApiTags('Reliability')
@ApiBearerAuth()
@Controller('v1/reliability')
export class LivesController {
  constructor(@Inject(ShopLives) private readonly shopLives: ShopLives) {}

  @Get('lives')
  @Allow(['manager', 'technician'])
  @Answers(200, pageOf(PartLife, 'PartLife'), 'Every stay of a part in a slot, from the shop’s history')
  async lives(@Caller() actor: Actor, @Query({ schema: LifeQuery }) query: z.infer<typeof LifeQuery>) {
    const { lives } = await this.shopLives.of(actor.shopId);
    const chosen = selectLives(lives, filterOf(query)).filter(
      (each) => query.machineId === undefined || each.machineId === query.machineId,
    );
    return listPage(
      chosen,
      query,
      (each) => each.machineId,
      (each) => each,
    );
  }

  @Get('life-fit')
  @Allow(['manager', 'technician'])
  @Answers(200, LifeFit, 'How long parts last: survival points, fitted curve, figures with intervals')
  async fit(@Caller() actor: Actor, @Query({ schema: LifeGroupQuery }) query: z.infer<typeof LifeGroupQuery>) {
    const { lives, register } = await this.shopLives.of(actor.shopId);
    const item = requireReplacingItem(register, query.itemCode, query.machineClass);
    const asked = selectLives(lives, filterOf(query));
    return answerFit(
      asked,
      likeGroups(lives, query.itemCode, query.machineClass !== undefined),
      statedPrior(register, item),
    );
  }

  @Get('parts-on-record')
  @Allow(['manager', 'technician'])
  @Answers(200, PartsOnRecord, 'Which parts a service item fitted, the most often fitted first')
  async parts(
    @Caller() actor: Actor,
    @Query({ schema: PartsOnRecordQuery }) query: z.infer<typeof PartsOnRecordQuery>,
  ) {
    const { lives, register } = await this.shopLives.of(actor.shopId);
    requireReplacingItem(register, query.itemCode);
    return { itemCode: query.itemCode, parts: partsOnRecord(lives, query.itemCode) };
  }

  @Get('grade-comparison')
  @Allow(['manager', 'technician'])
  @Answers(200, GradeComparison, 'Which of two part grades lasts longer in this shop')
  async grades(@Caller() actor: Actor, @Query({ schema: GradeQuery }) query: z.infer<typeof GradeQuery>) {
    const { lives, register } = await this.shopLives.of(actor.shopId);
    requireReplacingItem(register, query.itemCode, query.machineClass);
    for (const part of [query.first, query.second])
      if (!register.parts.some((each) => each.code === part))
        throw new DomainError('invalid-input', `"${part}" is not a part of this shop: use a code of GET /v1/parts.`);
    if (query.first === query.second)
      throw new DomainError('invalid-input', 'Name two different parts: a grade cannot outlast itself.');
    const { itemCode, machineClass, siteId } = query;
    return compareParts(selectLives(lives, { itemCode, machineClass, siteId }), [query.first, query.second], register);
  }

  @Get('replacement-age')
  @Allow(['manager', 'technician'])
  @Answers(200, ReplacementAge, 'When replacing beats waiting, and what the current interval costs against it')
  async replacementAge(
    @Caller() actor: Actor,
    @Query({ schema: ReplacementAgeQuery }) query: z.infer<typeof ReplacementAgeQuery>,
  ) {
    const { lives, register } = await this.shopLives.of(actor.shopId);
    const item = requireReplacingItem(register, query.itemCode, query.machineClass);
    const own = replacementCosts(register, query.machineClass, item);
    const costs = {
      planned: query.plannedCents ?? own.planned,
      failed: query.failedCents ?? own.failed + (query.plannedCents ?? own.planned) - own.planned,
    };
    const belief = beliefOfItem(register, lives, item, query.machineClass);
    const current = query.currentHours ?? item.rule.hours;
    const advice = adviseAge(belief.posterior, costs, current);
    const life = { shape: belief.report.shape!.value, scale: belief.report.scale!.value };
    const thousand = (rate: number) => Math.round(rate * 1000 * 100) / 100;
    return {
      itemCode: item.code,
      machineClass: query.machineClass,
      basis: belief.basis,
      plannedCents: costs.planned,
      failedCents: costs.failed,
      bestHours: advice.age,
      lowHours: advice.low,
      highHours: advice.high,
      centsPerThousandHours: thousand(advice.costRate),
      runToFailureCentsPerThousandHours: thousand(advice.runToFailure),
      chancePlannedPays: advice.chancePlannedPays,
      currentHours: current,
      currentCentsPerThousandHours: advice.current && thousand(advice.current.costRate),
      currentExcessCentsPerThousandHours: advice.current && thousand(advice.current.excess),
      opportunityHours: opportunityThreshold(life, costs, Math.min(own.shared, costs.planned)).age,
      curve: advice.curve.map((point) => ({
        ageHours: point.age,
        centsPerThousandHours: thousand(point.costRate),
        low: thousand(point.low),
        high: thousand(point.high),
      })),
      sentence: adviceSentence(advice),
      statement: belief.words,
      assumptions: [
        ...assumptionsOf(selectLives(lives, { itemCode: item.code, machineClass: query.machineClass })),
        'A failure costs the planned work and the harm set at the service item; the drive is left out.',
      ],
    };
  }

  @Get('block-replacement')
  @Allow(['manager', 'technician'])
  @Answers(200, BlockReplacement, 'Replacing at a fixed beat of hours, whatever was repaired in between')
  async blockReplacement(
    @Caller() actor: Actor,
    @Query({ schema: BlockReplacementQuery }) query: z.infer<typeof BlockReplacementQuery>,
  ) {
    const { lives, register } = await this.shopLives.of(actor.shopId);
    const item = requireReplacingItem(register, query.itemCode, query.machineClass);
    const planned = query.plannedCents ?? replacementCosts(register, query.machineClass, item).planned;
    const belief = beliefOfItem(register, lives, item, query.machineClass);
    const life = { shape: belief.report.shape!.value, scale: belief.report.scale!.value };
    return {
      ...blockAnswer(life, planned, query.minimalRepairCents),
      itemCode: item.code,
      machineClass: query.machineClass,
      basis: belief.basis,
      statement: belief.words,
    };
  }

  @Get('stopgap-risk')
  @Allow(['manager', 'technician'])
  @Answers(200, StopgapRisk, 'Chance that new parts on a worn seat fail within some hours')
  async stopgap(@Caller() actor: Actor, @Query({ schema: StopgapRiskQuery }) query: z.infer<typeof StopgapRiskQuery>) {
    if (query.lifeShareLow > query.lifeShareHigh)
      throw new DomainError('invalid-input', 'lifeShareLow is above lifeShareHigh: give the range from low to high.');
    const { lives, register } = await this.shopLives.of(actor.shopId);
    const item = requireReplacingItem(register, query.itemCode, query.machineClass);
    const asked = selectLives(lives, { itemCode: query.itemCode, machineClass: query.machineClass });
    const belief = believe(asked, likeGroups(lives, query.itemCode, true), statedPrior(register, item));
    const life = { shape: belief.report.shape!.value, scale: belief.report.scale!.value };
    const risk = stopgapRisk(life, [query.lifeShareLow, query.lifeShareHigh], query.ageHours, query.hoursAhead);
    return { ...risk, statement: belief.words };
  }
}

function filterOf({ knownFittingOnly, ...query }: z.infer<typeof LifeQuery> | z.infer<typeof LifeGroupQuery>) {
  return { ...query, knownFittingOnly: knownFittingOnly === 'true' };
}

/** Groups to learn from where the asked one is small: the item's lives by class. */
function likeGroups(lives: readonly ComponentLife[], itemCode: string, byClass: boolean): ComponentLife[][] {
  const ofItem = selectLives(lives, { itemCode });
  return [...groupBy(ofItem, (each) => (byClass ? each.machineClass : each.siteId)).values()];
}

function adviceSentence(advice: ReturnType<typeof adviseAge>): string {
  if (advice.age === null)
    return 'Waiting for failure is cheapest: replacing early would cost more than the failures it prevents.';
  const range = `${advice.low === null ? 'never' : Math.round(advice.low)} to ${advice.high === null ? 'never' : Math.round(advice.high)} h`;
  const saving = Math.round(100 * (1 - advice.costRate / advice.runToFailure));
  const now =
    advice.current === null
      ? ''
      : ` The current ${Math.round(advice.current.age)} h cost ${Math.round((100 * advice.current.excess) / advice.costRate)} % more.`;
  return `Replace at about ${Math.round(advice.age)} h (90 % of the belief: ${range}); it saves ${saving} % against waiting for failure.${now}`;
}
