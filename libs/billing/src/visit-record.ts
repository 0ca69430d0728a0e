/** The machine that a line is for. */
export interface MachineMark {
  readonly code: string;
  readonly serial: string;
  /** Meter hours at the visit, as read; empty = not read. */
  readonly hours: string;
}

/** Why a line costs nothing. */
export interface Coverage {
  readonly kind: 'contract' | 'warranty' | 'goodwill';
  readonly reason: string;
}

export interface WorkDone {
  readonly id: string;
  readonly code: string;
  readonly title: string;
  readonly skill: string | null;
  readonly machine: MachineMark;
  /** Standard time of the work. */
  readonly flatMinutes: number;
  readonly actualMinutes: number | null;
  /** Warranty or goodwill, stated by whoever finished the visit; contracts are found by themselves. */
  readonly coverage: Coverage | null;
}

export interface PartUsed {
  /** The work it was used for, so that what a contract includes takes its parts along; null = none in particular. */
  readonly workId: string | null;
  readonly code: string;
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  readonly unitPrice: string;
  readonly unitCost: string;
  readonly machine: MachineMark | null;
  readonly coverage: Coverage | null;
}

export interface ConsumableUsed {
  readonly workId: string;
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  readonly machine: MachineMark;
}

/** Work that a service agreement pays for. */
export interface AgreedWork {
  readonly agreement: string;
  readonly itemCode: string;
  /** How often in a year of the agreement; null = as often as it falls due. */
  readonly yearlyAllowance: number | null;
  readonly usedThisYear: number;
}

/** What was really done, as far as it is charged. */
export interface VisitRecord {
  readonly currency: string;
  readonly servicedOn: string;
  readonly siteCode: string;
  readonly siteName: string;
  readonly work: readonly WorkDone[];
  readonly parts: readonly PartUsed[];
  readonly consumables: readonly ConsumableUsed[];
  /** Minutes of the visit outside regular hours. */
  readonly overtimeMinutes: number;
  readonly travel: {
    readonly kilometres: number;
    /** The site's own visit fee; zero = the shop's. */
    readonly siteFee: string;
    /** Of the day's drive, when that is shared. */
    readonly driveShare: string;
  };
  readonly agreed: readonly AgreedWork[];
  /** Why no tax is due; null = it is. */
  readonly exemption: string | null;
}
