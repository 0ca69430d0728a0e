import { describe, expect, it } from '@jest/globals';
import { RunLength } from './run-length.js';
import { maxIterations } from './stop/max-iterations.js';

describe('RunLength', () => {
  it('knows the length of a run whose iterations are told from its first share on', () => {
    const { share } = maxIterations(1_000_000);
    const length = new RunLength();
    for (let at = 256; at < 50_000; at += 256) expect(length.forecast(at, share(at))).toBe(1_000_000);
  });

  it('forecasts a run that begins slowly within a seventh by a twentieth of it', () => {
    // measured: 10 s of Solomon's RC105 in a new process, iterations after each hundredth of the run
    const measured = [0, 512, 3072, 12_544, 26_368, 40_192];
    const length = new RunLength();
    const forecasts = measured.map((iterations, hundredths) => length.forecast(iterations, hundredths / 100));
    const made = 1_536_768;
    expect(Math.abs(forecasts.at(-1)! / made - 1)).toBeLessThan(1 / 7);
    // the mean speed says half of it
    expect(measured.at(-1)! / 0.05 / made).toBeLessThan(0.55);
  });

  it('says what has been made so far where no time has passed', () => {
    const length = new RunLength();
    expect(length.forecast(0, 0)).toBe(0);
    expect(length.forecast(512, 0)).toBe(512);
    expect(length.forecast(512, 1)).toBe(512);
  });
});
