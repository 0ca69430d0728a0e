import { randomUUID } from 'node:crypto';
import { CLASSES, itemsOfClass, PARTS } from '@deckround/catalogue';
import { lateCentsPerDay } from '@deckround/register';
import type { Tx } from '@deckround/store';

/** Gives a shop the starter catalogue; classes that it has already are left as the shop has edited them. */
export async function writeCatalogue(tx: Tx, shopId: string): Promise<void> {
  await tx.part.createMany({ data: PARTS.map((part) => ({ shopId, ...part })), skipDuplicates: true });
  const present = new Set((await tx.machineClass.findMany({ select: { code: true } })).map((each) => each.code));
  const added = CLASSES.filter(({ code }) => !present.has(code)).map((each) => ({
    ...each,
    id: randomUUID(),
    planId: randomUUID(),
    items: itemsOfClass(each.code).map((item) => ({ ...item, id: randomUUID() })),
  }));
  if (added.length === 0) return;
  const partIds = new Map(
    (await tx.part.findMany({ select: { id: true, code: true } })).map((part) => [part.code, part.id]),
  );
  await tx.machineClass.createMany({
    data: added.map(({ id, code, name, defaultSpindles }) => ({ id, shopId, code, name, defaultSpindles })),
  });
  await tx.preparationState.createMany({
    data: added.flatMap(({ id: classId, preparations }) =>
      preparations.map((state) => ({
        shopId,
        classId,
        code: state.code,
        name: state.name,
        minutes: state.minutes,
        parentCode: state.parent,
        cautions: [...state.cautions],
        source: state.source,
      })),
    ),
  });
  await tx.servicePlan.createMany({
    data: added.map(({ id: classId, planId, name }) => ({ id: planId, shopId, classId, name: `Upkeep of ${name}` })),
  });
  await tx.serviceItem.createMany({
    data: added.flatMap(({ planId, items }) =>
      items.map((item) => ({
        id: item.id,
        shopId,
        planId,
        code: item.code,
        title: item.title,
        scope: item.scope,
        intervalHours: item.rule.hours,
        intervalDays: item.rule.days,
        firstHours: item.rule.firstHours,
        seasonEvent: item.rule.seasonEvent,
        severeFactor: item.rule.severeFactor,
        toleranceHours: item.rule.toleranceHours,
        toleranceDays: item.rule.toleranceDays,
        anchor: item.rule.anchor,
        minutes: item.minutes,
        minutesPerSpindle: item.minutesPerSpindle,
        skill: item.skill,
        preparations: [...item.preparations],
        resetBy: [...item.resetBy],
        consumables: item.consumables.map((each) => ({ ...each })),
        steps: [...item.steps],
        torques: item.torques.map((torque) => ({ ...torque, ftLb: torque.ftLb && [...torque.ftLb] })),
        cautions: [...item.cautions],
        failureCents: item.failureCents,
        hazardShape: item.hazardShape,
        latePenaltyCentsPerDay: lateCentsPerDay(item.failureCents),
        sources: { ...item.sources },
      })),
    ),
  });
  await tx.serviceItemPart.createMany({
    data: added.flatMap(({ items }) =>
      items.flatMap(({ id: itemId, parts }) =>
        parts.map(({ code, quantity, perSpindle }) => ({
          shopId,
          itemId,
          partId: partIds.get(code)!,
          quantity,
          perSpindle,
        })),
      ),
    ),
  });
}
