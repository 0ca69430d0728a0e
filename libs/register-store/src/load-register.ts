import type { CatalogueItem } from '@deckround/catalogue';
import {
  type Calendars,
  DEFAULT_SHOP,
  type LearnedHazard,
  machineItemId,
  type Register,
  roadCallItemId,
  roadCallTitle,
  type ShopClass,
  type ShopSettings,
  stopgapItemId,
  stopgapTitle,
} from '@deckround/register';
import { readCompletions, readReadings, type Tx } from '@deckround/store';
import { BEGUN } from './begun-visits.js';
import { dateText, wallClockOf } from './local-time.js';

/**
 * The shop's whole state as plain data, in a score of set-based queries. Readings set aside are left out. Machines out of
 * use are in it, as what was learned on them is not to be forgotten: `inUse` leaves them out.
 *
 * @param history false = without readings, completions and findings, for what needs the present alone
 */
export async function loadRegister(tx: Tx, history = true): Promise<Register> {
  const shopRow = await tx.shop.findFirstOrThrow();
  const shop: ShopSettings = {
    ...DEFAULT_SHOP,
    ...(shopRow.settings as Partial<ShopSettings>),
    name: shopRow.name,
    timeZone: shopRow.timeZone,
    currency: shopRow.currency,
  };
  const calendars = await loadCalendars(tx);
  const machines = await tx.machine.findMany({
    include: { class: true },
    orderBy: { code: 'asc' },
  });
  const zones = new Map(calendars.sites.map((site) => [site.id, site.timeZone]));
  const standsAt = new Map(machines.map((machine) => [machine.id, machine.siteId]));
  return {
    shop,
    customers: (await tx.customer.findMany({ orderBy: { code: 'asc' } })).map((each) => ({
      id: each.id,
      name: each.name,
      billingEmail: each.billingEmail ?? '',
      termsDays: each.termsDays,
      taxExempt: each.taxExempt,
    })),
    ...calendars,
    machines: machines.map((machine) => ({
      id: machine.id,
      code: machine.code,
      siteId: machine.siteId,
      machineClass: machine.class.code,
      maker: machine.maker ?? '',
      model: machine.model ?? '',
      serial: machine.serial ?? machine.code,
      inServiceOn: machine.inServiceOn && dateText(machine.inServiceOn),
      retiredOn: machine.retiredOn && dateText(machine.retiredOn),
      spindles: machine.spindles,
      severity: machine.severity as 'light' | 'normal' | 'severe',
      meterRolloverHours: machine.meterRolloverHours && Number(machine.meterRolloverHours),
      notes: machine.notes,
    })),
    readings: (history ? await readReadings(tx, 'all') : [])
      .filter((each) => each.status === 'accepted')
      .map(({ id, machineId, readAt, hours, source, decided }) => ({
        ...{ id, machineId, readAt, hours, source },
        ...(decided ? { confirmed: true } : {}),
      })),
    meterChanges: (await tx.meterChange.findMany({ where: { origin: 'told' } })).map((each) => ({
      machineId: each.machineId,
      changedAt: dateText(each.changedOn),
      oldHours: Number(each.oldHours),
      newHours: Number(each.newHours),
    })),
    completions: (history ? await readCompletions(tx) : []).map(
      ({ machineId, itemCode, slot, doneOn, meterHours, outcome, part }) => ({
        ...{ machineId, code: itemCode, slot, doneOn, meterHours, outcome, part },
      }),
    ),
    moves: (await tx.machineMove.findMany()).map((each) => ({
      machineId: each.machineId,
      fromSiteId: each.fromSiteId,
      until: dateText(each.untilDate),
    })),
    weather: (history ? await tx.weatherDay.findMany({ orderBy: { weatherDate: 'asc' } }) : []).map((each) => ({
      siteId: each.siteId,
      date: dateText(each.weatherDate),
      lowC: each.lowC,
      highC: each.highC,
      rainMm: each.rainMm,
    })),
    parts: await loadParts(tx),
    classes: await loadClasses(tx),
    overrides: (await tx.machineItemOverride.findMany()).map((each) => ({
      machineId: each.machineId,
      itemId: each.itemId,
      disabled: each.disabled,
      intervalHours: each.intervalHours === null ? null : Number(each.intervalHours),
      intervalDays: each.intervalDays,
      minutes: each.minutes,
    })),
    findings: (history ? await tx.finding.findMany() : []).map((each) => ({
      machineId: each.machineId,
      code: each.itemCode,
      slot: each.slot,
      foundOn: dateText(each.foundOn),
      intervalFactor: each.intervalFactor,
      dueWithinHours: each.dueWithinHours === null ? null : Number(each.dueWithinHours),
      dueWithinDays: each.dueWithinDays,
    })),
    stopgaps: (await tx.stopgap.findMany({ where: { closedOn: null }, orderBy: { id: 'asc' } })).map((each) => ({
      id: each.id,
      machineId: each.machineId,
      code: each.code,
      title: stopgapTitle(each.description),
      madeOn: dateText(each.madeOn),
      renewedOn: each.renewedOn && dateText(each.renewedOn),
      limitHours: each.limitHours === null ? null : Number(each.limitHours),
      limitOn: each.limitOn && dateText(each.limitOn),
      partId: each.partId,
      partQuantity: Number(each.partQuantity),
      partExpectedOn: each.partExpectedOn && dateText(each.partExpectedOn),
      minutes: each.minutes,
      skill: each.skill,
      preparations: each.preparations,
      failureCents: each.failureCents,
    })),
    roadCalls: (await tx.roadCall.findMany({ where: { state: { not: 'closed' } }, orderBy: { id: 'asc' } })).map(
      (each) => ({
        id: each.id,
        machineId: each.machineId,
        title: roadCallTitle(each.symptom),
        minutes: each.minutes,
        skill: each.skill,
        downCentsPerDay: each.downCentsPerDay,
      }),
    ),
    promises: await loadPromises(tx, zones, standsAt),
    previous: await loadPrevious(tx, zones, standsAt),
  };
}

/** Who works when, and where somebody may be sent when; of all sites, or of some. */
export async function loadCalendars(tx: Tx, siteIds?: readonly string[]): Promise<Calendars> {
  const where = siteIds && { siteId: { in: [...siteIds] } };
  const sites = await tx.site.findMany({
    ...(siteIds && { where: { id: { in: [...siteIds] } } }),
    include: { siteAccessWindows: true, siteBlackouts: true },
    orderBy: { code: 'asc' },
  });
  return {
    sites: sites.map((site) => ({
      id: site.id,
      customerId: site.customerId,
      name: site.name,
      latitude: site.latitude,
      longitude: site.longitude,
      timeZone: site.timeZone,
      access: site.siteAccessWindows.map((window) => ({
        weekday: window.weekday,
        startMinute: window.openMinute,
        endMinute: window.closeMinute,
      })),
      blackouts: site.siteBlackouts.map(toDateRange),
      setupMinutes: site.setupMinutes,
      visitFeeCents: site.visitFeeCents,
      maxMachinesDown: site.maxMachinesDown,
      downRule: site.downRule as 'one-by-one' | 'whole-visit',
      preferredTechnicianId: site.preferredTechnicianId,
      preferenceCents: site.preferenceCents,
      notes: site.gateNotes,
    })),
    technicians: await loadTechnicians(tx),
    bars: (await tx.visitBar.findMany({ ...(where && { where }) })).map((each) => ({
      siteId: each.siteId,
      technicianId: each.technicianId,
      date: each.barDate && dateText(each.barDate),
    })),
    events: (await tx.siteEvent.findMany({ ...(where && { where }) })).map((each) => ({
      siteId: each.siteId,
      date: dateText(each.eventDate),
      fromMinute: each.fromMinute,
      name: each.name,
    })),
  };
}

async function loadTechnicians(tx: Tx): Promise<Register['technicians']> {
  const rows = await tx.technician.findMany({
    where: { active: true },
    include: { technicianShifts: true, technicianSkills: { orderBy: { skill: 'asc' } }, technicianAbsences: true },
    orderBy: { code: 'asc' },
  });
  return rows.map((each) => ({
    id: each.id,
    name: each.name,
    latitude: each.baseLatitude,
    longitude: each.baseLongitude,
    timeZone: each.timeZone,
    shifts: each.technicianShifts.map(({ weekday, startMinute, endMinute }) => ({ weekday, startMinute, endMinute })),
    absences: each.technicianAbsences.map(toDateRange),
    skills: each.technicianSkills.map(({ skill }) => skill),
    wageCentsPerHour: each.wageCentsPerHour,
    overtimeCentsPerHour: each.overtimeCentsPerHour,
    maxOvertimeMinutes: each.maxOvertimeMinutes,
    lunch:
      each.lunchMinutes === 0
        ? null
        : {
            minutes: each.lunchMinutes,
            earliestMinute: each.lunchEarliestMinute,
            latestMinute: each.lunchLatestMinute,
          },
  }));
}

async function loadParts(tx: Tx): Promise<Register['parts']> {
  const rows = await tx.part.findMany({
    include: { stocks: true, partOrders: { where: { outstanding: { gt: 0 } } } },
    orderBy: { code: 'asc' },
  });
  return rows.map((part) => ({
    id: part.id,
    code: part.code,
    description: part.description,
    designation: part.designation ?? '',
    unitPriceCents: part.unitPriceCents,
    unitCostCents: part.unitCostCents,
    onHand: part.stocks.reduce((sum, row) => sum + Number(row.onHand), 0),
    leadDays: part.leadDays,
    arrivals: part.partOrders.map((order) => ({
      date: dateText(order.expectedOn),
      quantity: Number(order.outstanding),
    })),
  }));
}

async function loadClasses(tx: Tx): Promise<ShopClass[]> {
  const rows = await tx.machineClass.findMany({
    include: {
      preparationStates: { orderBy: { code: 'asc' } },
      servicePlans: {
        include: {
          serviceItems: {
            where: { active: true },
            include: {
              serviceItemParts: { include: { part: true }, orderBy: { part: { code: 'asc' } } },
              learnedLife: true,
            },
            orderBy: { code: 'asc' },
          },
        },
        orderBy: { name: 'asc' },
      },
    },
    orderBy: { code: 'asc' },
  });
  return rows.map((each) => ({
    code: each.code,
    name: each.name,
    preparations: each.preparationStates.map((state) => ({
      code: state.code,
      name: state.name,
      minutes: state.minutes,
      parent: state.parentCode,
      cautions: state.cautions,
      source: state.source,
    })),
    items: each.servicePlans.flatMap((plan) =>
      plan.serviceItems.map((item) => ({
        id: item.id,
        code: item.code,
        title: item.title,
        classes: [each.code],
        scope: item.scope as 'machine' | 'spindle',
        rule: {
          hours: item.intervalHours === null ? null : Number(item.intervalHours),
          days: item.intervalDays,
          firstHours: item.firstHours === null ? null : Number(item.firstHours),
          seasonEvent: item.seasonEvent as 'before-first-cut' | 'before-storage' | null,
          severeFactor: item.severeFactor,
          toleranceHours: Number(item.toleranceHours),
          toleranceDays: item.toleranceDays,
          anchor: item.anchor as 'floating' | 'fixed',
        },
        minutes: item.minutes,
        minutesPerSpindle: item.minutesPerSpindle,
        skill: item.skill as CatalogueItem['skill'],
        mustDo: item.mustDo,
        preparations: item.preparations,
        resetBy: item.resetBy,
        parts: item.serviceItemParts.map((part) => ({
          code: part.part.code,
          quantity: Number(part.quantity),
          perSpindle: part.perSpindle,
        })),
        consumables: item.consumables as unknown as CatalogueItem['consumables'],
        steps: item.steps as unknown as string[],
        torques: item.torques as unknown as CatalogueItem['torques'],
        cautions: item.cautions,
        failureCents: item.failureCents,
        hazardShape: item.hazardShape,
        latePenaltyCentsPerDay: item.latePenaltyCentsPerDay,
        sources: item.sources as unknown as CatalogueItem['sources'],
        learned: item.learnedLife && item.learnedLife.basis !== 'prior' ? toHazard(item.learnedLife) : null,
      })),
    ),
  }));
}

/** What was promised, held fast, or begun: of the last, what is left to do. */
async function loadPromises(
  tx: Tx,
  zones: ReadonlyMap<string, string>,
  standsAt: ReadonlyMap<string, string>,
): Promise<Register['promises']> {
  const visits = await tx.visit.findMany({
    where: { OR: [{ state: 'confirmed' }, { state: 'proposed', pinned: true }, { state: 'proposed', ...BEGUN }] },
    include: { visitItems: { where: { state: 'planned' } } },
    orderBy: [{ startAt: 'asc' }, { id: 'asc' }],
  });
  const begun = await tx.visit.findMany({
    where: { state: { in: ['proposed', 'confirmed'] }, ...BEGUN },
    select: { id: true },
  });
  const begunIds = new Set(begun.map(({ id }) => id));
  const isOver = (visit: { id: string; visitItems: unknown[] }) =>
    begunIds.has(visit.id) && visit.visitItems.length === 0;
  return visits.flatMap((visit) => {
    // Nothing is left to be planned of it; it waits to be finished.
    if (isOver(visit)) return [];
    const isFast = visit.pinned || begunIds.has(visit.id);
    const zone = zones.get(visit.siteId)!;
    const clock = (instant: Date) => wallClockOf(instant, zone).slice(11, 16);
    return [
      {
        visitId: visit.id,
        // What is held fast, or begun, stays at its very time; a promise leaves room within its slot.
        kind: isFast ? ('frozen' as const) : ('confirmed' as const),
        siteId: visit.siteId,
        technicianId: visit.technicianId,
        date: dateText(visit.visitDate),
        from: clock(isFast ? visit.startAt : (visit.promisedFrom ?? visit.startAt)),
        to: clock(isFast ? visit.startAt : (visit.promisedTo ?? visit.startAt)),
        start: clock(visit.startAt),
        itemIds: workThere(visit, standsAt),
        moveCents: visit.state === 'confirmed' ? visit.moveCents : 0,
      },
    ];
  });
}

/** The proposed visits, for the search to start from. */
async function loadPrevious(
  tx: Tx,
  zones: ReadonlyMap<string, string>,
  standsAt: ReadonlyMap<string, string>,
): Promise<Register['previous']> {
  const visits = await tx.visit.findMany({
    where: { state: 'proposed', pinned: false, NOT: BEGUN },
    include: { visitItems: true },
    orderBy: [{ startAt: 'asc' }, { id: 'asc' }],
  });
  return visits.map((visit) => ({
    visitId: visit.id,
    start: wallClockOf(visit.startAt, zones.get(visit.siteId)!).slice(11, 16),
    siteId: visit.siteId,
    technicianId: visit.technicianId,
    date: dateText(visit.visitDate),
    itemIds: workThere(visit, standsAt),
  }));
}

/** The work of a visit on machines that still stand at its site. */
function workThere(
  { siteId, visitItems }: { siteId: string; visitItems: Parameters<typeof visitItemKey>[0][] },
  standsAt: ReadonlyMap<string, string>,
): string[] {
  return visitItems.filter((item) => standsAt.get(item.machineId) === siteId).map(visitItemKey);
}

/** The planner's name for the work of a visit's item. */
export function visitItemKey(item: {
  machineId: string;
  code: string;
  slot: string | null;
  stopgapId: string | null;
  roadCallId: string | null;
}): string {
  if (item.stopgapId !== null) return stopgapItemId(item.stopgapId);
  if (item.roadCallId !== null) return roadCallItemId(item.roadCallId);
  return machineItemId(item.machineId, item.code, item.slot);
}

function toDateRange(row: { fromDate: Date; toDate: Date; reason: string | null }) {
  return { from: dateText(row.fromDate), to: dateText(row.toDate), reason: row.reason ?? '' };
}

/** Only what the shop's own lives say, alone or pooled; a stated prior changes nothing. */
function toHazard({ shape, scaleHours, opportunityHours, bestHours, words }: LearnedHazard): LearnedHazard {
  return { shape, scaleHours, opportunityHours, bestHours, words };
}
