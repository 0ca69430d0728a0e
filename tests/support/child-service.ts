import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { freePort } from '@deckround/platform';
import { until } from './api-client.js';

const PROGRAM = {
  api: fileURLToPath(new URL('../../apps/api/dist/main.js', import.meta.url)),
  worker: fileURLToPath(new URL('../../apps/worker/dist/main.js', import.meta.url)),
} as const;

const NO_QUOTAS = { RATE_KEY_PER_MINUTE: '0', RATE_SESSION_PER_MINUTE: '0', RATE_PUBLIC_PER_MINUTE: '0' };

/** The built API or worker in a process of its own, to be killed and started again at the same address. */
export class ChildService {
  private child: ChildProcess | null = null;
  /** How often it was killed. */
  kills = 0;

  private constructor(
    private readonly program: keyof typeof PROGRAM,
    private readonly env: Record<string, string>,
    readonly address: string,
  ) {}

  static async start(program: keyof typeof PROGRAM, settings: Record<string, string>): Promise<ChildService> {
    const port = await freePort();
    const env = { PORT: String(port), LOG_LEVEL: 'silent', ...NO_QUOTAS, ...settings };
    const service = new ChildService(program, env, `http://127.0.0.1:${port}`);
    service.spawn();
    await service.ready();
    return service;
  }

  spawn(): void {
    this.child = spawn(process.execPath, [PROGRAM[this.program]], {
      env: { ...process.env, DATABASE_URL: '', REDIS_URL: '', ...this.env },
      stdio: 'ignore',
    });
  }

  /** Resolves once the API answers; a worker has no door to knock at. */
  async ready(): Promise<void> {
    if (this.program === 'worker') return;
    await until(
      () =>
        fetch(`${this.address}/ready`).then(
          (answer) => answer.status === 200,
          () => false,
        ),
      (isReady) => isReady,
    );
  }

  /** kill -9, and wait until it is gone. */
  async kill(): Promise<void> {
    const { child } = this;
    this.child = null;
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const gone = new Promise((done) => child.once('exit', done));
    child.kill('SIGKILL');
    await gone;
    this.kills += 1;
  }
}
