import { hashPassword } from '@deckround/api';
import { DEFAULT_SHOP, parseWeeklyWindows, readingKey, starterClasses } from '@deckround/register';
import { dateColumn, importRegister } from '@deckround/register-store';
import { Random } from '@deckround/routing';

export const WEEK = '2026-06-08';
export const EVE = '2026-06-07';
export const SIGN_IN = { email: 'manager@crowded.example', password: 'a long enough password' };
const WEEKS_READ = 20;

/** A shop whose technicians' days are all full: five sites for each of them every day, a stopgap to make good at each. */
export async function createCrowdedShop(store, technicians) {
  const register = crowdedRegister(technicians);
  const shop = await store.asOwner((tx) =>
    tx.shop.create({ data: { name: register.shop.name, timeZone: register.shop.timeZone } }),
  );
  const passwordHash = await hashPassword(SIGN_IN.password);
  await store.inShop(shop.id, async (tx) => {
    await importRegister(tx, shop.id, register);
    await tx.person.create({
      data: { shopId: shop.id, name: 'Hazel', email: SIGN_IN.email, role: 'manager', passwordHash },
    });
    await tx.stopgap.createMany({
      data: (await tx.machine.findMany()).map(({ id }) => ({
        ...{ shopId: shop.id, machineId: id, code: 'make-good', description: 'spliced the idler bracket' },
        ...{ madeOn: dateColumn('2026-06-03'), limitHours: 20, limitOn: dateColumn('2026-06-13'), minutes: 60 },
        ...{ skill: 'mechanical', preparations: [], failureCents: 45_000 },
      })),
    });
  });
}

function crowdedRegister(technicians) {
  const random = new Random(1);
  const between = (low, high) => low + ((high - low) * random.below(10_001)) / 10_000;
  const two = (n) => String(n).padStart(2, '0');
  const sites = Array.from({ length: technicians * 25 }, (_, index) => ({
    ...{ id: `S${index + 1}`, customerId: 'C1', name: `Green ${index + 1}`, timeZone: DEFAULT_SHOP.timeZone },
    ...{ latitude: between(41.3, 41.9), longitude: between(-94, -93.2) },
    ...{ access: parseWeeklyWindows('Mon-Fri 06:30-16:30'), blackouts: [], setupMinutes: 10, visitFeeCents: 0 },
    ...{ maxMachinesDown: 2, downRule: 'one-by-one', preferredTechnicianId: null, preferenceCents: 0, notes: '' },
  }));
  const machines = Array.from({ length: sites.length }, (_, index) => ({
    ...{ id: `M${index + 1}`, siteId: sites[index].id, machineClass: 'zero-turn', maker: '' },
    ...{ model: 'type Z', serial: `CR${index + 1}`, inServiceOn: '2024-04-01', spindles: 3, severity: 'normal' },
    ...{ notes: '' },
  }));
  const uses = machines.map(() => between(5, 15));
  const readings = machines.flatMap((machine, index) =>
    Array.from({ length: WEEKS_READ }, (_, week) => {
      const day = new Date(Date.parse(EVE) - 7 * 86_400_000 * (WEEKS_READ - 1 - week));
      const readAt = `${day.toISOString().slice(0, 10)}T06:00:00`;
      const hours = Math.round(10 * (200 + week * uses[index])) / 10;
      const id = readingKey(machine.id, readAt, 'technician', hours);
      return { id, machineId: machine.id, readAt, hours, source: 'technician' };
    }),
  );
  return {
    shop: { ...DEFAULT_SHOP, name: 'Crowded week' },
    customers: [{ id: 'C1', name: 'Meadow Trust', billingEmail: 'a@c1.example', termsDays: 30, taxExempt: false }],
    ...{ sites, machines, readings, classes: starterClasses() },
    technicians: Array.from({ length: technicians }, (_, index) => ({
      ...{ id: `T${two(index + 1)}`, name: `Technician ${index + 1}`, latitude: 41.6, longitude: -93.6 },
      ...{ timeZone: DEFAULT_SHOP.timeZone, shifts: parseWeeklyWindows('Mon-Fri 07:00-16:00'), absences: [] },
      ...{ skills: ['mechanical', 'hydraulic', 'electrical'], wageCentsPerHour: 3400, overtimeCentsPerHour: 5100 },
      ...{ maxOvertimeMinutes: 60, lunch: { minutes: 30, earliestMinute: 660, latestMinute: 810 } },
    })),
    ...{
      completions: [],
      parts: [],
      meterChanges: [],
      overrides: [],
      findings: [],
      stopgaps: [],
      moves: [],
      weather: [],
    },
    ...{ roadCalls: [], bars: [], events: [], promises: [], previous: [] },
  };
}
