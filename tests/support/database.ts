import { randomBytes } from 'node:crypto';
import { createDatabase, dropDatabase, Store } from '@deckround/store';

export interface TestDatabase {
  readonly url: string;
  readonly store: Store;
  drop(): Promise<void>;
}

/** A database of its own for one test file, copied from the migrated template of this run. */
export async function freshDatabase(): Promise<TestDatabase> {
  const admin = process.env.DECKROUND_TEST_POSTGRES;
  const template = process.env.DECKROUND_TEST_TEMPLATE;
  if (!admin || !template) throw new Error('Run the tests with `npm test`: it starts the database that they need.');
  const name = `${template}_${randomBytes(5).toString('hex')}`;
  await createDatabase(admin, name, template);
  const url = new URL(admin);
  url.pathname = `/${name}`;
  const store = Store.open(url.toString(), 5);
  return {
    url: url.toString(),
    store,
    drop: async () => {
      await store.close();
      await dropDatabase(admin, name);
    },
  };
}

export function redisUrl(): string {
  const url = process.env.DECKROUND_TEST_REDIS;
  if (!url) throw new Error('Run the tests with `npm test`: it finds or starts the Redis that they need.');
  return url;
}
