import type { TravelRule } from './charge-settings.js';
import { Exact } from './money.js';
import type { VisitRecord } from './visit-record.js';

/** What the way to the site costs, and what the document calls it; null = nothing. */
export function travelCharge(
  { travel }: VisitRecord,
  rule: TravelRule,
): { readonly reason: string; readonly amount: string } | null {
  switch (rule.rule) {
    case 'none':
      return null;
    case 'visit-fee':
      return positive('Visit fee', new Exact(travel.siteFee).isZero() ? rule.fee : travel.siteFee);
    case 'zone': {
      const zones = rule.zones.toSorted((one, other) => one.upToKm - other.upToKm);
      const zone = zones.find((each) => travel.kilometres <= each.upToKm) ?? zones.at(-1);
      return zone ? positive(`Travel, ${zone.name}`, zone.fee) : null;
    }
    case 'shared-drive':
      return positive('Share of the day’s drive', travel.driveShare);
  }
}

/** What a day's drive costs, before it is shared. */
export function dayDriveCost(driveMinutes: number, rule: TravelRule): string {
  return rule.rule === 'shared-drive' ? new Exact(rule.ratePerHour).times(driveMinutes).div(60).toString() : '0';
}

function positive(reason: string, amount: string) {
  return new Exact(amount).greaterThan(0) ? { reason, amount } : null;
}
