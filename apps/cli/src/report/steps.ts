interface Terminal {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

/** Says what is going on, how far it is, and how long it took. */
export class Steps {
  constructor(private readonly out: Terminal) {}

  async run<T>(what: string, work: (say: (progress: string) => void) => Promise<T>): Promise<T> {
    const begun = performance.now();
    const seconds = () => `${((performance.now() - begun) / 1000).toFixed(1)} s`;
    let progress = '';
    const show = () => this.out.write(`\r\u001b[K  ${what} … ${progress === '' ? '' : `${progress}, `}${seconds()}`);
    if (!this.out.isTTY) this.out.write(`  ${what} …\n`);
    const timer = this.out.isTTY ? setInterval(show, 250) : undefined;
    try {
      const result = await work((text) => {
        progress = text;
      });
      this.out.write(
        `${this.out.isTTY ? '\r\u001b[K' : ''}  ${what}: done in ${seconds()}${progress === '' ? '' : ` (${progress})`}\n`,
      );
      return result;
    } finally {
      clearInterval(timer);
    }
  }
}
