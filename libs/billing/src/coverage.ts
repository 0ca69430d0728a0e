import type { AgreedWork, Coverage, VisitRecord, WorkDone } from './visit-record.js';

/**
 * What each piece of work is covered by: what the technician stated comes first, then the agreement, as often as its
 * yearly allowance lasts.
 */
export function coverageOf(record: VisitRecord): ReadonlyMap<string, Coverage> {
  const used = new Map<AgreedWork, number>();
  const covered = new Map<string, Coverage>();
  for (const work of record.work) {
    const coverage = work.coverage ?? agreedCoverage(work, record.agreed, used);
    if (coverage) covered.set(work.id, coverage);
  }
  return covered;
}

function agreedCoverage(work: WorkDone, agreed: readonly AgreedWork[], used: Map<AgreedWork, number>): Coverage | null {
  for (const item of agreed) {
    if (item.itemCode !== work.code) continue;
    const before = item.usedThisYear + (used.get(item) ?? 0);
    if (item.yearlyAllowance === null)
      return { kind: 'contract', reason: `included in the agreement "${item.agreement}"` };
    if (before >= item.yearlyAllowance) continue;
    used.set(item, (used.get(item) ?? 0) + 1);
    return {
      kind: 'contract',
      reason: `included in the agreement "${item.agreement}": ${before + 1} of ${item.yearlyAllowance} this year`,
    };
  }
  return null;
}
