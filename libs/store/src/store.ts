import { PrismaPg } from '@prisma/adapter-pg';
import { Prisma, PrismaClient } from './generated/client.js';

/** The handle of one transaction. Functions that read or write take it as their first argument and have no other. */
export type Tx = Prisma.TransactionClient;

const LIMITS = { maxWait: 15_000, timeout: 180_000 };

/** PostgreSQL as this program uses it: every piece of work is one transaction, bound to one shop. */
export class Store {
  private constructor(private readonly client: PrismaClient) {}

  static open(databaseUrl: string, pool = 10): Store {
    return new Store(new PrismaClient({ adapter: new PrismaPg({ connectionString: databaseUrl, max: pool }) }));
  }

  /**
   * Runs `work` in one transaction that sees and touches only rows of `shopId`, whatever the queries say: the database
   * enforces it by row-level security.
   */
  inShop<T>(shopId: string, work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.client.$transaction(async (tx) => {
      await tx.$queryRaw`select set_config('role', 'deckround_app', true), set_config('app.shop_id', ${shopId}, true)`;
      return work(tx);
    }, LIMITS);
  }

  /** Runs `work` across shops: sign-in before the shop is known, sweeps of lost jobs, set-up. */
  asOwner<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.client.$transaction(work, LIMITS);
  }

  async isReady(): Promise<boolean> {
    try {
      await this.client.$queryRaw`select 1`;
      return true;
    } catch {
      return false;
    }
  }

  close(): Promise<void> {
    return this.client.$disconnect();
  }
}
