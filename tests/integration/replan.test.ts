import { stoppedClock } from '@deckround/platform';
import { createProcessors } from '@deckround/worker';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { createSmallShop, WEEK } from '../support/small-shop.js';
import { workerContext } from '../support/worker-context.js';

let database: TestDatabase;
let shopId: string;
const clock = stoppedClock('2026-06-05T15:00:00Z');
beforeAll(async () => {
  database = await freshDatabase();
  ({ shopId } = await createSmallShop(database.store));
});
afterAll(() => database.drop());

async function planAgain(): Promise<string> {
  const { store } = database;
  const run = await store.inShop(shopId, (tx) =>
    tx.planRun.create({
      data: { shopId, weekOf: new Date(`${WEEK}T00:00:00Z`), days: 7, seconds: 5, iterations: 2000 },
    }),
  );
  await createProcessors(workerContext(store, { clock })).plan({ shopId, runId: run.id });
  expect(await store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id: run.id } }))).toMatchObject({
    status: 'done',
  });
  return run.id;
}

const visits = () => database.store.inShop(shopId, (tx) => tx.visit.findMany({ orderBy: { startAt: 'asc' } }));
const dateOf = (visit: { visitDate: Date }) => visit.visitDate.toISOString().slice(0, 10);

describe('planning a week again', () => {
  it('in mid-week sends nobody to a day that is over, and leaves those days as they were', async () => {
    await planAgain();
    const before = await visits();
    expect(before.length).toBeGreaterThan(0);
    const early = before[0]!;
    await database.store.inShop(shopId, (tx) =>
      tx.visit.update({
        where: { id: early.id },
        data: { visitDate: new Date(`${WEEK}T00:00:00Z`), state: 'confirmed' },
      }),
    );
    clock.moveTo('2026-06-10T12:00:00Z');
    const runId = await planAgain();
    const after = await visits();
    const kept = after.find((visit) => visit.id === early.id)!;
    expect(kept.state).toBe('confirmed');
    const fresh = after.filter((visit) => visit.planRunId === runId);
    expect(fresh.length).toBeGreaterThan(0);
    for (const visit of fresh) expect(dateOf(visit) >= '2026-06-10').toBe(true);
  });

  it('cancels, with its reason, a promise that nobody can keep any more', async () => {
    const open = (await visits()).filter((visit) => visit.state === 'proposed' && dateOf(visit) >= '2026-06-10');
    expect(open.length).toBeGreaterThan(0);
    const promised = open[0]!;
    await database.store.inShop(shopId, async (tx) => {
      await tx.visit.update({
        where: { id: promised.id },
        data: { state: 'confirmed', promisedFrom: promised.startAt, promisedTo: promised.startAt, moveCents: 2500 },
      });
      await tx.technicianAbsence.create({
        data: {
          shopId,
          technicianId: promised.technicianId,
          fromDate: promised.visitDate,
          toDate: promised.visitDate,
          reason: 'ill',
        },
      });
    });
    await planAgain();
    const after = (await visits()).find((visit) => visit.id === promised.id)!;
    expect(after.state).toBe('cancelled');
    expect(after.reason).toBe('Its promise could not be kept when the week was planned again.');
  });

  it('in the middle of a day leaves that day as it stands, but for who does not work after all', async () => {
    const { store } = database;
    const today = '2026-06-11';
    const byTechnician = await store.inShop(shopId, async (tx) => {
      const technicians = await tx.technician.findMany({ orderBy: { code: 'asc' } });
      const standing = await tx.visit.findMany({
        where: { state: 'proposed', visitDate: { gte: new Date(`${WEEK}T00:00:00Z`) } },
        include: { visitItems: true },
        orderBy: { startAt: 'asc' },
      });
      expect(standing.length).toBeGreaterThanOrEqual(2);
      // One visit for each of two people, on Thursday after nine.
      return Promise.all(
        technicians.slice(0, 2).map(async (technician, k) => {
          const visit = standing[k]!;
          const startAt = new Date(`${today}T14:00:00Z`);
          await tx.visit.update({
            where: { id: visit.id },
            data: {
              visitDate: new Date(`${today}T00:00:00Z`),
              technicianId: technician.id,
              pinned: false,
              ...{ arriveAt: startAt, startAt },
              endAt: new Date(startAt.getTime() + visit.endAt.getTime() - visit.startAt.getTime()),
            },
          });
          return { technicianId: technician.id, visit };
        }),
      );
    });
    const [works, ill] = [byTechnician[0]!, byTechnician[1]!];
    // Its work has been done, or was found on the spot: the plan knows nothing of it, but it is not over yet.
    const found = await store.inShop(shopId, async (tx) => {
      const {
        id: _,
        statedCharges: __,
        visitItems,
        ...row
      } = await tx.visit.findUniqueOrThrow({
        where: { id: works.visit.id },
        include: { visitItems: true },
      });
      const at = (clock: string) => new Date(`${today}T${clock}:00Z`);
      const visit = await tx.visit.create({
        data: { ...row, arriveAt: at('19:00'), startAt: at('19:00'), endAt: at('19:30') },
      });
      const [{ id: ___, ...item }] = visitItems as [(typeof visitItems)[0]];
      await tx.visitItem.create({ data: { ...item, visitId: visit.id, serviceItemId: null, code: 'found-here' } });
      return visit;
    });
    await store.inShop(shopId, (tx) =>
      tx.technicianAbsence.create({
        data: {
          ...{ shopId, technicianId: ill.technicianId, reason: 'ill' },
          fromDate: new Date(`${today}T00:00:00Z`),
          toDate: new Date(`${today}T00:00:00Z`),
        },
      }),
    );
    // Three in the afternoon at the shop.
    clock.moveTo(`${today}T20:00:00Z`);
    const runId = await planAgain();
    const after = await store.inShop(shopId, (tx) => tx.visit.findMany({ include: { visitItems: true } }));
    const todays = after.filter((visit) => dateOf(visit) === today && visit.state !== 'cancelled');
    const [stands, alsoStands, ...added] = todays.sort((a, b) => a.startAt.getTime() - b.startAt.getTime());
    expect(alsoStands).toMatchObject({ id: found.id, state: 'proposed', startAt: found.startAt });
    expect(stands).toMatchObject({ id: works.visit.id, state: 'proposed', startAt: new Date(`${today}T14:00:00Z`) });
    // Whoever is called on has an hour to come.
    for (const visit of added) expect(visit.startAt >= new Date(`${today}T21:00:00Z`)).toBe(true);
    const codes = (visit: { visitItems: { code: string; machineId: string }[] }) =>
      visit.visitItems.map(({ code, machineId }) => `${machineId} ${code}`).sort();
    expect(codes(stands!)).toEqual(codes(works.visit));
    const later = after
      .filter((visit) => dateOf(visit) >= today && visit.id !== works.visit.id && visit.state !== 'cancelled')
      .flatMap(codes);
    expect(codes(works.visit).some((work) => later.includes(work))).toBe(false);
    expect(codes(ill.visit).some((work) => later.includes(work))).toBe(true);
    const run = await store.inShop(shopId, (tx) => tx.planRun.findUniqueOrThrow({ where: { id: runId } }));
    expect(run.warning).toBe('Work had begun on 2026-06-11: what was planned for that day stays as it was.');
  });

  it('says of what was held fast, or has no work left, what became of it', async () => {
    const { store } = database;
    clock.moveTo('2026-06-07T15:00:00Z');
    await planAgain();
    const [held, done] = (await visits()).filter((visit) => visit.state === 'proposed' && dateOf(visit) >= WEEK);
    await store.inShop(shopId, async (tx) => {
      await tx.visit.update({ where: { id: held!.id }, data: { pinned: true } });
      await tx.technicianAbsence.create({
        data: {
          ...{ shopId, technicianId: held!.technicianId, reason: 'ill' },
          ...{ fromDate: held!.visitDate, toDate: held!.visitDate },
        },
      });
      await tx.visit.update({
        where: { id: done!.id },
        data: { state: 'confirmed', promisedFrom: done!.startAt, promisedTo: done!.startAt },
      });
      // Work that the plan knows nothing of, as if it had been done meanwhile.
      for (const { id } of await tx.visitItem.findMany({ where: { visitId: done!.id } })) {
        const none = { serviceItemId: null, stopgapId: null, roadCallId: null };
        await tx.visitItem.update({ where: { id }, data: { ...none, code: `found-${id}` } });
      }
    });
    await planAgain();
    const reasonOf = async (id: string) => (await visits()).find((visit) => visit.id === id)?.reason;
    expect(await reasonOf(held!.id)).toBe('It could not stay where it was held fast when the week was planned again.');
    expect(await reasonOf(done!.id)).toBe('Nothing of its work was left to do when the week was planned again.');
  });
});
