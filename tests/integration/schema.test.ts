import { readFileSync } from 'node:fs';
import { migrate, migrationNames, migrationsFolder } from '@deckround/store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';

let database: TestDatabase;
beforeAll(async () => {
  database = await freshDatabase();
});
afterAll(() => database.drop());

describe('the database and the Prisma schema', () => {
  it('agree on every column of every model', async () => {
    const schema = readFileSync(new URL('../../prisma/schema.prisma', import.meta.url), 'utf8');
    const models = [...schema.matchAll(/^model (\w+) \{([\s\S]*?)^\}/gm)].map(([, name, body]) => ({
      name: name!,
      body: body!,
    }));
    expect(models.length).toBeGreaterThan(40);
    const modelNames = new Set(models.map((model) => model.name));
    const stated = new Map<string, string[]>();
    for (const { body } of models) {
      const table = /@@map\("(\w+)"\)/.exec(body)![1]!;
      const columns = [...body.matchAll(/^ {2}(\w+)\s+(\w+)[[\]?]*(.*)$/gm)]
        .filter(([, , type]) => !modelNames.has(type!))
        .map(([, field, , rest]) => /@map\("(\w+)"\)/.exec(rest!)?.[1] ?? field!);
      stated.set(table, columns.sort());
    }
    const rows = await database.store.asOwner(
      (tx) => tx.$queryRaw<{ table_name: string; column_name: string }[]>`
        select table_name, column_name from information_schema.columns where table_schema = 'public' and table_name <> '_prisma_migrations'`,
    );
    const found = new Map<string, string[]>();
    for (const row of rows) found.set(row.table_name, [...(found.get(row.table_name) ?? []), row.column_name].sort());
    expect(Object.fromEntries(stated)).toEqual(Object.fromEntries(found));
  });

  it('reads every model through the client', async () => {
    await database.store.asOwner(async (tx) => {
      const delegates = Object.entries(tx).filter(
        ([name, value]) => !name.startsWith('$') && typeof value === 'object' && value !== null && 'findFirst' in value,
      );
      expect(delegates.length).toBeGreaterThan(40);
      for (const [, delegate] of delegates)
        await (delegate as { findFirst(args: object): Promise<unknown> }).findFirst({});
    });
  });

  it('records migrations as Prisma does, and applies none twice', async () => {
    expect(await migrate(database.url)).toEqual([]);
    const rows = await database.store.asOwner(
      (tx) => tx.$queryRaw<
        { migration_name: string; checksum: string; applied_steps_count: number; finished_at: Date }[]
      >`
        select migration_name, checksum, applied_steps_count, finished_at from _prisma_migrations order by migration_name`,
    );
    expect(rows.map((row) => row.migration_name)).toEqual(migrationNames(migrationsFolder()));
    for (const row of rows) {
      expect(row.checksum).toMatch(/^[0-9a-f]{64}$/);
      expect(row.applied_steps_count).toBe(1);
      expect(row.finished_at).toBeInstanceOf(Date);
    }
  });
});

describe('rows of a shop', () => {
  it('are seen and written by that shop alone, whatever the query says', async () => {
    const { store } = database;
    const shops = await store.asOwner(async (tx) => [
      await tx.shop.create({ data: { name: 'One', timeZone: 'America/Chicago' } }),
      await tx.shop.create({ data: { name: 'Two', timeZone: 'America/Chicago' } }),
    ]);
    const [one, two] = shops as [(typeof shops)[number], (typeof shops)[number]];
    const customer = await store.inShop(one.id, (tx) =>
      tx.customer.create({ data: { shopId: one.id, code: 'C1', name: 'Meadow Trust' } }),
    );
    expect(await store.inShop(two.id, (tx) => tx.customer.findMany())).toEqual([]);
    expect(
      await store.inShop(two.id, (tx) =>
        tx.customer.updateMany({ where: { id: customer.id }, data: { name: 'Taken' } }),
      ),
    ).toEqual({ count: 0 });
    await expect(
      store.inShop(two.id, (tx) => tx.customer.create({ data: { shopId: one.id, code: 'C2', name: 'Planted' } })),
    ).rejects.toThrow(/row-level security/);
    await expect(
      store.inShop(two.id, (tx) =>
        tx.site.create({
          data: {
            shopId: two.id,
            customerId: customer.id,
            code: 'S1',
            name: 'Foreign',
            latitude: 0,
            longitude: 0,
            timeZone: 'UTC',
          },
        }),
      ),
    ).rejects.toMatchObject({ code: 'P2003' });
    expect(await store.inShop(one.id, (tx) => tx.customer.count())).toBe(1);
  });

  it('leave nothing behind when their transaction fails', async () => {
    const { store } = database;
    const shop = await store.asOwner((tx) => tx.shop.create({ data: { name: 'Three', timeZone: 'America/Chicago' } }));
    await expect(
      store.inShop(shop.id, async (tx) => {
        await tx.customer.create({ data: { shopId: shop.id, code: 'C1', name: 'Meadow Trust' } });
        throw new Error('on purpose');
      }),
    ).rejects.toThrow('on purpose');
    expect(await store.inShop(shop.id, (tx) => tx.customer.count())).toBe(0);
  });

  it.each([
    ['a window that ends before it begins', { weekday: 1, startMinute: 600, endMinute: 500 }],
    ['a weekday that does not exist', { weekday: 8, startMinute: 400, endMinute: 500 }],
  ])('refuse %s', async (_, shift) => {
    const { store } = database;
    const shop = await store.asOwner((tx) =>
      tx.shop.create({ data: { name: `Checks ${shift.weekday}`, timeZone: 'America/Chicago' } }),
    );
    await expect(
      store.inShop(shop.id, async (tx) => {
        const technician = await tx.technician.create({
          data: {
            shopId: shop.id,
            code: 'T',
            name: 'T',
            baseLatitude: 0,
            baseLongitude: 0,
            timeZone: 'UTC',
            wageCentsPerHour: 1,
            overtimeCentsPerHour: 1,
          },
        });
        await tx.technicianShift.create({ data: { shopId: shop.id, technicianId: technician.id, ...shift } });
      }),
    ).rejects.toThrow(/check constraint|23514/);
  });
});
