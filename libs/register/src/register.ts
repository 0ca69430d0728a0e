import type { CatalogueItem, CataloguePreparation } from '@deckround/catalogue';
import type { TravelSettings } from '@deckround/planning';
import type { Completion, FindingForUpkeep } from '@deckround/upkeep';
import type { MeterChange, Reading, WeatherDay } from '@deckround/usage';

/** Minutes of a local day, on an ISO 8601 weekday (1 = Monday … 7 = Sunday). */
export interface WeeklyWindow {
  readonly weekday: number;
  readonly startMinute: number;
  readonly endMinute: number;
}

/** Whole local days, both ends included. */
export interface DateRange {
  readonly from: string;
  readonly to: string;
  readonly reason: string;
}

export interface Customer {
  readonly id: string;
  readonly name: string;
  readonly billingEmail: string;
  readonly termsDays: number;
  readonly taxExempt: boolean;
}

export interface Site {
  readonly id: string;
  readonly customerId: string;
  readonly name: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
  /** Set where the register's file names no time zone: `timeZone` is the shop's then. */
  readonly zoneUntold?: true;
  readonly access: readonly WeeklyWindow[];
  readonly blackouts: readonly DateRange[];
  readonly setupMinutes: number;
  readonly visitFeeCents: number;
  readonly maxMachinesDown: number;
  readonly downRule: 'one-by-one' | 'whole-visit';
  readonly preferredTechnicianId: string | null;
  readonly preferenceCents: number;
  readonly notes: string;
}

export interface Machine {
  readonly id: string;
  /** What the shop calls it: the same in its files, where it is the id too, and in its database. */
  readonly code: string;
  readonly siteId: string;
  /** Machine class code. */
  readonly machineClass: string;
  readonly maker: string;
  readonly model: string;
  readonly serial: string;
  readonly inServiceOn: string | null;
  /** First day out of use; absent or null = in use. */
  readonly retiredOn?: string | null;
  readonly spindles: number;
  readonly severity: 'light' | 'normal' | 'severe';
  /** Hours at which its meter starts again from zero; absent or null = not told. */
  readonly meterRolloverHours?: number | null;
  readonly notes: string;
}

export interface Technician {
  readonly id: string;
  readonly name: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
  /** As of a site. */
  readonly zoneUntold?: true;
  readonly shifts: readonly WeeklyWindow[];
  readonly absences: readonly DateRange[];
  readonly skills: readonly string[];
  readonly wageCentsPerHour: number;
  readonly overtimeCentsPerHour: number;
  readonly maxOvertimeMinutes: number;
  readonly lunch: { readonly minutes: number; readonly earliestMinute: number; readonly latestMinute: number } | null;
}

export interface Part {
  readonly id: string;
  /** The shop's word for it, which service items name. */
  readonly code: string;
  readonly description: string;
  readonly designation: string;
  readonly unitPriceCents: number;
  readonly unitCostCents: number;
  readonly onHand: number;
  readonly leadDays: number;
  readonly arrivals: readonly { readonly date: string; readonly quantity: number }[];
}

/** A temporary repair still open, and the work that it owes. */
export interface OpenStopgap {
  readonly id: string;
  readonly machineId: string;
  readonly code: string;
  readonly title: string;
  readonly madeOn: string;
  /** Its limit was set anew: its hours count from here. */
  readonly renewedOn: string | null;
  readonly limitHours: number | null;
  readonly limitOn: string | null;
  readonly partId: string | null;
  readonly partQuantity: number;
  readonly partExpectedOn: string | null;
  readonly minutes: number;
  readonly skill: string | null;
  readonly preparations: readonly string[];
  readonly failureCents: number;
}

/** A machine left a site. */
export interface MachineMove {
  readonly machineId: string;
  readonly fromSiteId: string;
  /** Last day there. */
  readonly until: string;
}

/** A call for help that no visit has answered yet. */
export interface OpenRoadCall {
  readonly id: string;
  readonly machineId: string;
  readonly title: string;
  readonly minutes: number;
  readonly skill: string | null;
  /** What a day of waiting costs the customer, cents. */
  readonly downCentsPerDay: number;
}

/** Where somebody must not be sent; null = whoever, whenever. */
export interface VisitBar {
  readonly siteId: string;
  readonly technicianId: string | null;
  readonly date: string | null;
}

/** All machines of the site are able to mow by then, and nobody works on them afterwards that day. */
export interface SiteEvent {
  readonly siteId: string;
  readonly date: string;
  readonly fromMinute: number;
  readonly name: string;
}

/** A visit announced to the customer that the next plan has to respect. */
export interface PromisedVisit {
  readonly visitId: string;
  readonly kind: 'frozen' | 'confirmed';
  readonly siteId: string;
  readonly technicianId: string;
  readonly date: string;
  /** Slot for the start of work, and the start as it is planned; wall clock of the site. */
  readonly from: string;
  readonly to: string;
  readonly start: string;
  readonly itemIds: readonly string[];
  readonly moveCents: number;
}

/** A visit that nobody has been told of yet. */
export interface ProposedVisit {
  readonly visitId: string;
  readonly siteId: string;
  readonly technicianId: string;
  readonly date: string;
  /** Start of work, wall clock of the site. */
  readonly start: string;
  readonly itemIds: readonly string[];
}

/** A service item as this shop has it; `id` is the row's, or the catalogue's code where there is no database. */
export interface ShopServiceItem extends CatalogueItem {
  readonly id: string;
  readonly mustDo: boolean;
  readonly latePenaltyCentsPerDay: number;
  /** What the shop's own history has taught about the parts that this item replaces; absent = nothing yet. */
  readonly learned?: LearnedHazard | null;
}

/** A Weibull life fitted to, or pooled over, the shop's own component lives. */
export interface LearnedHazard {
  readonly shape: number;
  readonly scaleHours: number;
  /** While the machine is open anyway, parts older than this are worth replacing; null = leave them. */
  readonly opportunityHours: number | null;
  /** Cheapest age of planned replacement; null = waiting for failure is cheapest. */
  readonly bestHours: number | null;
  /** How it was learned, in words. */
  readonly words: string;
}

export interface ShopClass {
  readonly code: string;
  readonly name: string;
  readonly preparations: readonly CataloguePreparation[];
  readonly items: readonly ShopServiceItem[];
}

/** What one machine does differently from its class. */
export interface MachineItemOverride {
  readonly machineId: string;
  readonly itemId: string;
  readonly disabled: boolean;
  readonly intervalHours: number | null;
  readonly intervalDays: number | null;
  readonly minutes: number | null;
}

export interface ShopSettings {
  readonly name: string;
  readonly timeZone: string;
  readonly currency: string;
  readonly travel: TravelSettings;
  readonly laterTripShare: number;
}

/** A shop's whole state as plain data, from a folder of CSV files or from the database; the snapshots are made of it. */
export interface Register {
  readonly shop: ShopSettings;
  readonly customers: readonly Customer[];
  readonly sites: readonly Site[];
  readonly machines: readonly Machine[];
  readonly readings: readonly Reading[];
  readonly meterChanges: readonly MeterChange[];
  readonly moves: readonly MachineMove[];
  readonly weather: readonly WeatherDay[];
  readonly completions: readonly (Completion & { readonly part: string | null })[];
  readonly technicians: readonly Technician[];
  readonly parts: readonly Part[];
  readonly classes: readonly ShopClass[];
  readonly overrides: readonly MachineItemOverride[];
  readonly findings: readonly FindingForUpkeep[];
  readonly stopgaps: readonly OpenStopgap[];
  readonly roadCalls: readonly OpenRoadCall[];
  readonly bars: readonly VisitBar[];
  readonly events: readonly SiteEvent[];
  readonly promises: readonly PromisedVisit[];
  readonly previous: readonly ProposedVisit[];
}
