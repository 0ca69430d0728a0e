import { MANUAL_FIRST } from '@deckround/catalogue';
import type { LoadLine } from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { addDays } from '@deckround/register';
import { dateColumn, dateText } from '@deckround/register-store';
import { lastReadings, type Prisma, type Tx } from '@deckround/store';
import { isElsewhere, toVisitView, VISIT_INCLUDE } from '../planning/visit-view.js';
import { torquesOf } from '../register/service-items.js';
import { dateOrNull, hoursText, instantOrNull } from '../register/values.js';
import { isDoneAhead, leftToLoad } from './left-to-load.js';
import { workDoneOn } from './work-done-on.js';

const DAYS_BACK = 7;

/** The planned days of a technician, and the one that is asked for: today, else the next, else the last. */
export async function chooseDay(tx: Tx, technicianId: string, today: string, asked: string | undefined) {
  const routes = await tx.dayRoute.findMany({
    where: { technicianId, routeDate: { gte: dateColumn(addDays(today, -DAYS_BACK)) } },
    select: { routeDate: true },
    orderBy: { routeDate: 'asc' },
  });
  const dates = [...new Set(routes.map((route) => dateText(route.routeDate)))];
  if (dates.length === 0) {
    // A calendar that has run ahead of the plans (or a demo's): the days planned last.
    const last = await tx.dayRoute.findMany({
      where: { technicianId },
      select: { routeDate: true },
      orderBy: { routeDate: 'desc' },
      take: DAYS_BACK,
    });
    dates.push(...new Set(last.map((route) => dateText(route.routeDate)).reverse()));
    return { dates, date: asked ?? dates[0] ?? today };
  }
  return { dates, date: asked ?? dates.find((date) => date >= today) ?? dates.at(-1)! };
}

const ITEM_INCLUDE = { serviceItemParts: { include: { part: true } } } as const;
type ServiceItemRow = Prisma.ServiceItemGetPayload<{ include: typeof ITEM_INCLUDE }>;

/** One day of a technician with all that is wanted at the machines. */
export async function loadDay(tx: Tx, technicianId: string, date: string) {
  const day = dateColumn(date);
  const technician = await tx.technician.findUnique({ where: { id: technicianId } });
  if (!technician) throw new DomainError('not-found', 'There is no such technician.');
  const shop = await tx.shop.findFirstOrThrow();
  const route = await tx.dayRoute.findFirst({ where: { technicianId, routeDate: day } });
  const visits = await tx.visit.findMany({
    where: { technicianId, visitDate: day, state: { not: 'cancelled' } },
    include: { ...VISIT_INCLUDE, site: true },
    orderBy: { startAt: 'asc' },
  });
  const doneOn = await workDoneOn(tx, visits);
  const parts = await tx.part.findMany({ orderBy: { code: 'asc' } });
  const machineIds = [...new Set(visits.flatMap((visit) => visit.visitItems.map((item) => item.machineId)))];
  const known = await loadMachines(tx, machineIds);
  const views = visits.map(({ site, ...visit }) => {
    const view = { ...toVisitView(visit), site };
    const marked = visit.visitItems.map((item) => {
      const elsewhere = isElsewhere(visit, item);
      const isSpared = elsewhere || isDoneAhead(view) || (doneOn.get(item.id) ?? date) < date;
      return { ...item, isElsewhere: elsewhere, isSpared };
    });
    return { ...view, machines: machinesOf(marked, known) };
  });
  const work = views.flatMap(({ machines }) => machines.flatMap(({ items }) => items));
  return {
    date,
    technician: { id: technician.id, name: technician.name },
    shop: { name: shop.name, timeZone: shop.timeZone, currency: shop.currency, units: shop.units },
    manualFirst: MANUAL_FIRST,
    parts: parts.map(({ id, code, description, unit }) => ({ id, code, description, unit })),
    route: route && {
      ...route,
      technicianName: technician.name,
      date,
      leaveAt: route.leaveAt.toISOString(),
      returnAt: route.returnAt.toISOString(),
      lunchFrom: instantOrNull(route.lunchFrom),
      lunchTo: instantOrNull(route.lunchTo),
      load: leftToLoad(route.load as unknown as LoadLine[], work),
    },
    visits: views,
  };
}

type Known = Awaited<ReturnType<typeof loadMachines>>;

async function loadMachines(tx: Tx, machineIds: readonly string[]) {
  const ids = { in: [...machineIds] };
  const machines = await tx.machine.findMany({ where: { id: ids }, include: { class: true } });
  const classIds = [...new Set(machines.map((machine) => machine.classId))];
  return {
    machines: new Map(machines.map((machine) => [machine.id, machine])),
    readings: await lastReadings(tx, machineIds),
    hoursPerWeek: new Map(
      (
        await tx.usageForecast.findMany({ where: { machineId: ids }, select: { machineId: true, hoursPerWeek: true } })
      ).map((row) => [row.machineId, row.hoursPerWeek]),
    ),
    stopgaps: await tx.stopgap.findMany({ where: { machineId: ids }, include: { part: true } }),
    preparations: await tx.preparationState.findMany({ where: { classId: { in: classIds } } }),
    items: await tx.serviceItem.findMany({
      where: { plan: { classId: { in: classIds } } },
      include: { ...ITEM_INCLUDE, plan: true },
      orderBy: { code: 'asc' },
    }),
  };
}

type MarkedItem = Prisma.VisitItemGetPayload<object> & { isElsewhere: boolean; isSpared: boolean };

function machinesOf(visitItems: readonly MarkedItem[], known: Known) {
  const machines = [...new Set(visitItems.map((item) => item.machineId))]
    .map((id) => known.machines.get(id)!)
    .sort((a, b) => (a.code < b.code ? -1 : 1));
  return machines.map((machine) => {
    const ownItems = known.items.filter((item) => item.plan.classId === machine.classId);
    const serviceItem = new Map(ownItems.map((item) => [item.id, item]));
    const stopgaps = known.stopgaps.filter((each) => each.machineId === machine.id && each.closedOn === null);
    const planned = visitItems
      .filter((item) => item.machineId === machine.id)
      .toSorted((a, b) => (a.code < b.code ? -1 : 1));
    const items = planned.map((item) => {
      const service = item.serviceItemId === null ? undefined : serviceItem.get(item.serviceItemId);
      const stopgap = known.stopgaps.find((each) => each.id === item.stopgapId);
      return {
        ...item,
        steps: (service?.steps ?? []) as string[],
        torques: service ? torquesOf(service.torques) : [],
        cautions: service?.cautions ?? [],
        parts: service
          ? partsOf(service, machine.spindles, item.slot)
          : stopgap?.part
            ? [partOf(stopgap.part, Number(stopgap.partQuantity))]
            : [],
        preparations: service?.preparations ?? stopgap?.preparations ?? [],
      };
    });
    const reading = known.readings.get(machine.id);
    const preparations = known.preparations.filter((each) => each.classId === machine.classId);
    return {
      ...machine,
      machineClass: machine.class.code,
      lastReading: reading ? { readAt: reading.readAt.toISOString(), hours: String(reading.hours) } : null,
      hoursPerWeek: known.hoursPerWeek.get(machine.id) ?? null,
      cautions: [
        ...new Set([
          ...preparationCautions(
            preparations,
            items.flatMap((item) => item.preparations),
          ),
          ...items.flatMap((item) => item.cautions),
        ]),
      ],
      stopgaps: stopgaps.map((each) => ({
        description: each.description,
        limitHours: hoursText(each.limitHours),
        countedFrom: dateText(each.renewedOn ?? each.madeOn),
        limitOn: dateOrNull(each.limitOn),
      })),
      itemCodes: ownItems.map(({ code, title, scope }) => ({ code, title, scope })),
      items,
    };
  });
}

/** Cautions of what has to be prepared, and of what that rests on. */
function preparationCautions(
  preparations: readonly Prisma.PreparationStateGetPayload<object>[],
  codes: readonly string[],
): string[] {
  const byCode = new Map(preparations.map((each) => [each.code, each]));
  const wanted = new Set<string>();
  for (let code of codes) {
    for (let each = byCode.get(code); each && !wanted.has(code); each = byCode.get(code)) {
      wanted.add(code);
      code = each.parentCode ?? '';
    }
  }
  return [...wanted].flatMap((code) => byCode.get(code)!.cautions);
}

function partsOf(item: ServiceItemRow, spindles: number, slot: string | null) {
  const places = slot === null ? spindles : 1;
  const consumables = item.consumables as unknown as {
    name: string;
    quantity: number;
    unit: string;
    perSpindle: boolean;
  }[];
  return [
    ...item.serviceItemParts.map((each) => partOf(each.part, Number(each.quantity) * (each.perSpindle ? places : 1))),
    ...consumables.map(({ name, quantity, unit, perSpindle }) => ({
      partId: null,
      name,
      quantity: quantity * (perSpindle ? places : 1),
      unit,
    })),
  ];
}

function partOf(part: { id: string; description: string; unit: string }, quantity: number) {
  return { partId: part.id, name: part.description, quantity, unit: part.unit };
}
