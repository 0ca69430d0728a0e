import { hashPassword } from '@deckround/api';
import { DEFAULT_SHOP, parseWeeklyWindows, type Register, readingKey, starterClasses } from '@deckround/register';
import { importRegister } from '@deckround/register-store';
import type { Store } from '@deckround/store';

/** The week that the small shop's data lead up to. */
export const WEEK = '2026-06-08';
export const PASSWORD = 'a long enough password';

/** 2 technicians, 3 sites, 6 machines with a year of weekly readings, steady by construction: plumbing, not proof. */
export function smallRegister(): Register {
  const sites = [
    ['S1', 41.65, -93.6],
    ['S2', 41.72, -93.7],
    ['S3', 41.5, -93.5],
  ] as const;
  const machines = Array.from({ length: 6 }, (_, index) => ({
    id: `M${index + 1}`,
    code: `M${index + 1}`,
    siteId: `S${(index % 3) + 1}`,
    machineClass: index === 5 ? 'walk-behind' : 'zero-turn',
    maker: '',
    model: 'type T',
    serial: `SN${index + 1}`,
    inServiceOn: '2024-04-01',
    spindles: index === 5 ? 2 : 3,
    severity: 'normal' as const,
    notes: '',
  }));
  const readings = machines.flatMap((machine, index) =>
    Array.from({ length: 52 }, (_, week) => {
      const readAt = `${new Date(Date.UTC(2025, 5, 9) + week * 7 * 86_400_000).toISOString().slice(0, 10)}T15:00:00`;
      const hours = 200 + week * (6 + index);
      return {
        id: readingKey(machine.id, readAt, 'telematics', hours),
        machineId: machine.id,
        readAt,
        hours,
        source: 'telematics',
      };
    }),
  );
  return {
    shop: { ...DEFAULT_SHOP, name: 'Small shop' },
    customers: [{ id: 'C1', name: 'Meadow Trust', billingEmail: 'a@c1.example', termsDays: 30, taxExempt: false }],
    sites: sites.map(([id, latitude, longitude]) => ({
      id,
      customerId: 'C1',
      name: `Site ${id}`,
      latitude,
      longitude,
      timeZone: 'America/Chicago',
      access: parseWeeklyWindows('Mon-Fri 07:00-16:00'),
      blackouts: [],
      setupMinutes: 10,
      visitFeeCents: 0,
      maxMachinesDown: 1,
      downRule: 'one-by-one' as const,
      preferredTechnicianId: null,
      preferenceCents: 0,
      notes: '',
    })),
    machines,
    technicians: ['T1', 'T2'].map((id) => ({
      id,
      name: `Technician ${id}`,
      latitude: 41.6,
      longitude: -93.6,
      timeZone: 'America/Chicago',
      shifts: parseWeeklyWindows('Mon-Fri 07:00-16:00'),
      absences: [],
      skills: ['mechanical', 'hydraulic', 'electrical'],
      wageCentsPerHour: 3400,
      overtimeCentsPerHour: 5100,
      maxOvertimeMinutes: 60,
      lunch: { minutes: 30, earliestMinute: 660, latestMinute: 810 },
    })),
    parts: [
      {
        id: 'BRG-6205-2Z',
        code: 'BRG-6205-2Z',
        description: 'bearing',
        designation: '6205-2Z',
        unitPriceCents: 1450,
        unitCostCents: 710,
        onHand: 10,
        leadDays: 3,
        arrivals: [],
      },
    ],
    classes: starterClasses(),
    readings,
    meterChanges: [],
    completions: machines.flatMap((machine, index) => [
      {
        machineId: machine.id,
        code: 'sharpen-blades',
        slot: null,
        doneOn: '2026-03-02',
        meterHours: 200 + 38 * (6 + index),
        outcome: 'done' as const,
        part: null,
      },
      {
        machineId: machine.id,
        code: 'change-engine-oil',
        slot: null,
        doneOn: '2025-10-06',
        meterHours: 200 + 17 * (6 + index),
        outcome: 'done' as const,
        part: null,
      },
    ]),
    overrides: [],
    findings: [],
    stopgaps: [],
    moves: [],
    weather: [],
    roadCalls: [],
    bars: [],
    events: [],
    promises: [],
    previous: [],
  };
}

export interface SmallShop {
  readonly shopId: string;
  readonly machineIds: ReadonlyMap<string, string>;
  readonly siteIds: ReadonlyMap<string, string>;
}

/** Writes the small shop, with a manager, a technician who drives T1's days, and a supervisor of site S1. */
export async function createSmallShop(store: Store, name = 'Small shop'): Promise<SmallShop> {
  const shop = await store.asOwner((tx) => tx.shop.create({ data: { name, timeZone: 'America/Chicago' } }));
  const passwordHash = await hashPassword(PASSWORD);
  return store.inShop(shop.id, async (tx) => {
    await importRegister(tx, shop.id, smallRegister());
    const slug = name.toLowerCase().replace(/\W+/g, '-');
    for (const role of ['manager', 'technician', 'supervisor']) {
      await tx.person.create({
        data: { shopId: shop.id, name: role, email: `${role}@${slug}.example`, role, passwordHash },
      });
    }
    const technician = await tx.person.findFirstOrThrow({ where: { role: 'technician' } });
    await tx.technician.updateMany({ where: { code: 'T1' }, data: { personId: technician.id } });
    const sites = await tx.site.findMany();
    const supervisor = await tx.person.findFirstOrThrow({ where: { role: 'supervisor' } });
    const own = sites.find((site) => site.code === 'S1')!;
    await tx.personSite.create({ data: { shopId: shop.id, personId: supervisor.id, siteId: own.id } });
    return {
      shopId: shop.id,
      siteIds: new Map(sites.map((site) => [site.code, site.id])),
      machineIds: new Map((await tx.machine.findMany()).map((machine) => [machine.code, machine.id])),
    };
  });
}
