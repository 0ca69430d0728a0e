import { randomBytes } from 'node:crypto';
import { dayNumber } from '@deckround/register';
import { dateColumn, importRegister, wallClockOf } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { DEMO_TODAY, inventShop } from './invented-shop.js';

export interface SignInLine {
  readonly role: string;
  readonly email: string;
  readonly password: string;
}

export interface Demo {
  readonly shopId: string;
  readonly signIns: readonly SignInLine[];
  readonly machines: number;
  readonly readings: number;
  readonly setAside: number;
}

interface DemoOptions {
  readonly hashPassword: (password: string) => Promise<string>;
  /** The shop that looks at it; null = it stands for itself. */
  readonly demoOf: string | null;
  readonly now: Date;
}

/** Writes the invented shop as a shop of its own, with what is open on its desk: stopgaps, orders, findings. */
export async function createDemo(store: Store, { hashPassword, demoOf, now }: DemoOptions): Promise<Demo> {
  const register = inventShop();
  const people = [
    { name: 'Hazel', email: 'manager@demo.example', role: 'manager' },
    { name: 'Wren', email: 'technician@demo.example', role: 'technician' },
    { name: 'Linnet', email: 'supervisor@demo.example', role: 'supervisor' },
  ];
  const secrets = await Promise.all(
    people.map(async (person) => {
      const password = randomBytes(9).toString('base64url');
      return { ...person, password, passwordHash: await hashPassword(password) };
    }),
  );
  const shop = await store.asOwner((tx) =>
    tx.shop.create({
      data: {
        name: register.shop.name,
        timeZone: register.shop.timeZone,
        currency: register.shop.currency,
        demoOf,
        clockShiftDays: daysTo(DEMO_TODAY, now, register.shop.timeZone),
      },
    }),
  );
  // One transaction: a demo that is cut off while it is made leaves nothing behind but an empty shop, and starts over.
  const { readings } = await store.inShop(shop.id, async (tx) => {
    const result = await importRegister(tx, shop.id, register);
    for (const { password: _, ...person } of secrets) await tx.person.create({ data: { shopId: shop.id, ...person } });
    await giveSites(tx, shop.id);
    await giveDays(tx);
    await openDesk(tx, shop.id, register.parts);
    return result;
  });
  return {
    shopId: shop.id,
    signIns: secrets.map(({ role, email, password }) => ({ role, email, password })),
    machines: register.machines.length,
    readings: readings.readings,
    setAside: readings.setAside,
  };
}

/** Whole days from the world's date there to another. */
function daysTo(date: string, now: Date, timeZone: string): number {
  return dayNumber(date) - dayNumber(wallClockOf(now, timeZone).slice(0, 10));
}

/** The supervisor looks after the first customer's sites. */
async function giveSites(tx: Tx, shopId: string): Promise<void> {
  const supervisor = await tx.person.findFirstOrThrow({ where: { role: 'supervisor' } });
  const first = await tx.site.findFirstOrThrow({ orderBy: { code: 'asc' } });
  const sites = await tx.site.findMany({ where: { customerId: first.customerId } });
  await tx.personSite.createMany({ data: sites.map((site) => ({ shopId, personId: supervisor.id, siteId: site.id })) });
}

/** The technician drives the first technician's days. */
async function giveDays(tx: Tx): Promise<void> {
  const person = await tx.person.findFirstOrThrow({ where: { role: 'technician' } });
  const technician = await tx.technician.findFirstOrThrow({ orderBy: { code: 'asc' } });
  await tx.technician.update({ where: { id: technician.id }, data: { personId: person.id } });
}

async function openDesk(
  tx: Tx,
  shopId: string,
  parts: readonly { code: string; arrivals: readonly { date: string; quantity: number }[] }[],
): Promise<void> {
  const partId = new Map((await tx.part.findMany()).map((part) => [part.code, part.id]));
  await tx.partOrder.createMany({
    data: parts.flatMap((part) =>
      part.arrivals.map((arrival) => ({
        shopId,
        partId: partId.get(part.code)!,
        quantity: arrival.quantity,
        orderedOn: dateColumn('2026-06-03'),
        expectedOn: dateColumn(arrival.date),
      })),
    ),
  });
  const machine = async (code: string) => (await tx.machine.findFirstOrThrow({ where: { code } })).id;
  const stopgaps = [
    {
      code: 'M023',
      what: 'spliced the idler bracket; new bracket on order',
      hours: 20,
      part: 'IDL-BRACKET',
      expected: '2026-06-09',
      minutes: 35,
      preparations: ['covers-off', 'belt-off'],
      skill: 'mechanical',
    },
    {
      code: 'M087',
      what: 'clamped a weeping lift hose; new hose on order',
      hours: 15,
      part: 'HSE-3-8',
      expected: '2026-06-10',
      minutes: 40,
      preparations: [],
      skill: 'hydraulic',
    },
    {
      code: 'M142',
      what: 'taped the seat switch plug dry; new switch to fit',
      hours: 10,
      part: 'SW-SEAT',
      expected: null,
      minutes: 20,
      preparations: [],
      skill: 'electrical',
    },
    {
      code: 'M205',
      what: 'reused a glazed deck belt; new belt on order',
      hours: 25,
      part: 'BLT-DECK',
      expected: '2026-06-09',
      minutes: 15,
      preparations: ['covers-off', 'belt-off'],
      skill: 'mechanical',
    },
  ];
  for (const each of stopgaps) {
    const row = await tx.stopgap.create({
      data: {
        shopId,
        machineId: await machine(each.code),
        code: 'make-good',
        description: each.what,
        madeOn: dateColumn('2026-06-03'),
        limitHours: each.hours,
        limitOn: dateColumn('2026-06-15'),
        partId: partId.get(each.part)!,
        partExpectedOn: each.expected === null ? null : dateColumn(each.expected),
        minutes: each.minutes,
        skill: each.skill,
        preparations: each.preparations,
        failureCents: 45_000,
      },
    });
    await tx.followUp.create({
      data: { shopId, machineId: row.machineId, stopgapId: row.id, owed: each.what, dueOn: row.limitOn },
    });
  }
  await tx.finding.create({
    data: {
      shopId,
      machineId: await machine('M056'),
      itemCode: 'replace-spindle-bearings',
      slot: 'spindle 2',
      foundOn: dateColumn(DEMO_TODAY),
      observation: 'rough to the hand, warm after a run',
      measures: { feel: 'rough' },
      dueWithinHours: 15,
    },
  });
}
