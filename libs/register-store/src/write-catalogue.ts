import { CLASSES, itemsOfClass, PARTS } from '@deckround/catalogue';
import { lateCentsPerDay } from '@deckround/register';
import type { Tx } from '@deckround/store';

/** Gives a shop the starter catalogue; classes that it has already are left as the shop has edited them. */
export async function writeCatalogue(tx: Tx, shopId: string): Promise<void> {
  for (const part of PARTS) {
    const { code, ...values } = part;
    await tx.part.upsert({ where: { shopId_code: { shopId, code } }, create: { shopId, code, ...values }, update: {} });
  }
  const partIds = new Map(
    (await tx.part.findMany({ select: { id: true, code: true } })).map((part) => [part.code, part.id]),
  );
  const present = new Set((await tx.machineClass.findMany({ select: { code: true } })).map((each) => each.code));
  for (const each of CLASSES.filter(({ code }) => !present.has(code))) {
    const { id: classId } = await tx.machineClass.create({
      data: { shopId, code: each.code, name: each.name, defaultSpindles: each.defaultSpindles },
    });
    await tx.preparationState.createMany({
      data: each.preparations.map((state) => ({
        shopId,
        classId,
        code: state.code,
        name: state.name,
        minutes: state.minutes,
        parentCode: state.parent,
        cautions: [...state.cautions],
        source: state.source,
      })),
    });
    const { id: planId } = await tx.servicePlan.create({ data: { shopId, classId, name: `Upkeep of ${each.name}` } });
    for (const item of itemsOfClass(each.code)) {
      const { id: itemId } = await tx.serviceItem.create({
        data: {
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
        },
      });
      await tx.serviceItemPart.createMany({
        data: item.parts.map((part) => ({
          shopId,
          itemId,
          partId: partIds.get(part.code)!,
          quantity: part.quantity,
          perSpindle: part.perSpindle,
        })),
      });
    }
  }
}
