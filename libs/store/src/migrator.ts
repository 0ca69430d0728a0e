import { createHash, randomUUID } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pg from 'pg';

/** Same for every process that migrates this program's databases; any constant will do. */
const MIGRATION_LOCK = 0x0dec_420d;

/** The folder of migrations, found by walking up from here: the same from sources and from built files. */
export function migrationsFolder(): string {
  for (let at = dirname(fileURLToPath(import.meta.url)); at !== dirname(at); at = dirname(at)) {
    const candidate = join(at, 'prisma', 'migrations');
    if (existsSync(candidate)) return candidate;
  }
  throw new Error('The folder prisma/migrations is missing from this installation.');
}

/**
 * Brings a database to the newest schema and records each step in `_prisma_migrations` exactly as `prisma migrate
 * deploy` does (whose engine needs a download), so that the two agree on any database.
 * @returns names of the migrations applied now
 * @throws Error when an applied migration differs from its file, or a step fails; a failed step leaves nothing behind
 */
export async function migrate(databaseUrl: string, folder = migrationsFolder()): Promise<string[]> {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    await client.query('select pg_advisory_lock($1)', [MIGRATION_LOCK]);
    await client.query(`create table if not exists _prisma_migrations (
      id varchar(36) primary key not null,
      checksum varchar(64) not null,
      finished_at timestamptz,
      migration_name varchar(255) not null,
      logs text,
      rolled_back_at timestamptz,
      started_at timestamptz not null default now(),
      applied_steps_count integer not null default 0
    )`);
    const { rows } = await client.query<{ migration_name: string; checksum: string }>(
      'select migration_name, checksum from _prisma_migrations where rolled_back_at is null and finished_at is not null',
    );
    const applied = new Map(rows.map((row) => [row.migration_name, row.checksum]));
    const done: string[] = [];
    for (const name of migrationNames(folder)) {
      const sql = readFileSync(join(folder, name, 'migration.sql'));
      const checksum = createHash('sha256').update(sql).digest('hex');
      const recorded = applied.get(name);
      if (recorded === checksum) continue;
      if (recorded !== undefined) {
        throw new Error(`Migration ${name} was changed after it had been applied to this database. Restore the file.`);
      }
      await applyOne(client, name, checksum, sql.toString('utf8'));
      done.push(name);
    }
    return done;
  } finally {
    await client.end();
  }
}

export function migrationNames(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

async function applyOne(client: pg.Client, name: string, checksum: string, sql: string): Promise<void> {
  const startedAt = new Date();
  await client.query('begin');
  try {
    await client.query(sql);
    await client.query(
      `insert into _prisma_migrations (id, checksum, migration_name, started_at, finished_at, applied_steps_count)
       values ($1, $2, $3, $4, now(), 1)`,
      [randomUUID(), checksum, name, startedAt],
    );
    await client.query('commit');
  } catch (error) {
    await client.query('rollback');
    throw new Error(`Migration ${name} failed and was undone: ${(error as Error).message}`);
  }
}
