import {
  completionKey,
  findingsOf,
  type IntervalProposal,
  type LearnedItem,
  type LifeHistory,
  type RecordedLife,
  type RemovalFindings,
} from '@deckround/learning';
import type { Tx } from '@deckround/store';
import { dateColumn, dateText } from './local-time.js';

/** What the database knows beyond completions: lives entered by hand, findings, stopgaps, shared causes. */
export async function loadLifeHistory(tx: Tx): Promise<LifeHistory> {
  // Slots and parts by themselves: with the lives of a large shop the client would name more of them than a statement takes.
  const lives = await tx.componentLife.findMany({ orderBy: { fittedOn: 'asc' } });
  const slots = new Map((await tx.componentSlot.findMany()).map((slot) => [slot.id, slot]));
  const parts = new Map((await tx.part.findMany()).map((part) => [part.id, part.code]));
  const findings = await tx.finding.findMany({ where: { itemCode: { startsWith: 'replace-' } } });
  const caused = await tx.completion.findMany({ where: { causeId: { not: null } } });
  const stopgaps = await tx.stopgap.findMany();
  const codeOf = (partId: string | null) => (partId === null ? null : parts.get(partId)!);
  return {
    stopgaps: stopgaps.map((each) => ({
      machineId: each.machineId,
      code: each.code,
      part: codeOf(each.partId),
      madeOn: dateText(each.madeOn),
    })),
    recorded: lives.map(
      (each): RecordedLife => ({
        ...placeOf(slots.get(each.slotId)!),
        part: codeOf(each.partId),
        fittedOn: each.fittedOn && dateText(each.fittedOn),
        fittedHours: each.fittedHours === null ? null : Number(each.fittedHours),
        removedOn: each.removedOn && dateText(each.removedOn),
        removedHours: each.removedHours === null ? null : Number(each.removedHours),
        reason: each.removalReason as RecordedLife['reason'],
        findings: {
          bearingFeel: each.bearingFeel as RemovalFindings['bearingFeel'],
          spacerEndLip: each.spacerEndLip,
          housingStepWear: each.housingStepWear as RemovalFindings['housingStepWear'],
          debrisWrap: each.debrisWrap as RemovalFindings['debrisWrap'],
          debrisCupMissing: each.debrisCupMissing,
          greaseLook: each.greaseLook as RemovalFindings['greaseLook'],
        },
        rootCause: each.rootCause,
        causeId: each.causeId,
      }),
    ),
    findings: findings.map((each) => {
      const measures = each.measures as Record<string, unknown>;
      return {
        machineId: each.machineId,
        itemCode: each.itemCode,
        slot: each.slot,
        foundOn: dateText(each.foundOn),
        findings: findingsOf(measures),
        rootCause: typeof measures['root-cause'] === 'string' ? measures['root-cause'] : null,
      };
    }),
    causes: new Map(
      caused.map((each) => [
        completionKey(
          each.machineId,
          each.itemCode,
          each.slotId && slots.get(each.slotId)!.name,
          dateText(each.doneOn),
        ),
        each.causeId!,
      ]),
    ),
  };
}

/**
 * Writes what a re-fit has learned: newest lives take the place of the old ones, open proposals that are no longer made
 * are superseded, and a proposal that a person refused is not made again with the same hours.
 */
export async function writeLearned(
  tx: Tx,
  shopId: string,
  runId: string,
  asOf: string,
  { learned, proposals }: { readonly learned: readonly LearnedItem[]; readonly proposals: readonly IntervalProposal[] },
): Promise<void> {
  await tx.learnedLife.deleteMany({});
  await tx.learnedLife.createMany({
    data: learned.map((each) => ({
      shopId,
      serviceItemId: each.itemId,
      runId,
      asOf: dateColumn(asOf),
      basis: each.basis,
      lives: each.lives,
      failures: each.failures,
      shape: each.shape,
      scaleHours: each.scaleHours,
      opportunityHours: each.opportunityHours,
      bestHours: each.bestHours,
      words: each.words,
    })),
  });
  await tx.intervalProposal.updateMany({
    where: { state: 'proposed' },
    data: { state: 'superseded', version: { increment: 1 } },
  });
  const refused = await tx.intervalProposal.findMany({ where: { state: { in: ['refused', 'reversed'] } } });
  const isRefused = (each: IntervalProposal) =>
    refused.some((row) => row.serviceItemId === each.itemId && Number(row.proposedHours) === each.proposedHours);
  await tx.intervalProposal.createMany({
    data: proposals
      .filter((each) => !isRefused(each))
      .map((each) => ({
        shopId,
        serviceItemId: each.itemId,
        runId,
        currentHours: each.currentHours,
        proposedHours: each.proposedHours,
        savesCentsPerThousandHours: each.savesCentsPerThousandHours,
        evidence: each.evidence as object,
        sentence: each.sentence,
        proposedOn: dateColumn(asOf),
      })),
  });
  await tx.lifeRun.update({
    where: { id: runId },
    data: { result: { items: learned.length, proposals: proposals.length } },
  });
}

function placeOf(slot: { machineId: string; kind: string; name: string }) {
  return { machineId: slot.machineId, slot: slot.name, itemCode: itemOfSlot(slot) };
}

/** The item that replaces what sits in a slot; slots that carry no kind are told by their name. */
function itemOfSlot({ kind, name }: { kind: string; name: string }): string {
  return kind === 'spindle' || /\bspindle\b/.test(name) ? 'replace-spindle-bearings' : `replace-${kind}`;
}
