import { inUse, usageSnapshot } from '@deckround/register';
import { cleanReadings, dateOfDay, fitUsage, forecastUsage } from '@deckround/usage';
import type { Command } from 'commander';
import { dateOption, wholeOption } from '../options.js';
import { readFolder } from '../read-folder.js';
import { writeWholeFile } from '../whole-file.js';

interface Options {
  register: string;
  asOf: string;
  days: number;
  out: string;
  setAside?: string;
  timeZone: string;
}

export function addForecast(program: Command): void {
  program
    .command('forecast')
    .description('write each machine’s lifetime hours on each day ahead, without any server')
    .requiredOption('--register <folder>', 'folder of CSV files')
    .requiredOption('--as-of <date>', 'forecast origin: later readings are not used', dateOption)
    .requiredOption('--days <n>', 'days ahead', wholeOption(1, 400))
    .requiredOption('--out <file>', 'CSV: machine_id,date,p10,p25,p50,p75,p90')
    .option('--set-aside <file>', 'CSV of doubtful readings: machine_id,read_at,hours,reason')
    .option('--time-zone <zone>', 'time zone of sites that name none', 'America/Chicago')
    .action(async (options: Options) => {
      const { register } = await readFolder(options.register, { timeZone: options.timeZone });
      const snapshot = usageSnapshot(inUse(register, options.asOf), options.asOf, options.days);
      const forecast = forecastUsage(fitUsage(snapshot));
      writeWholeFile(options.out, forecastLines(forecast));
      let doubtful = '';
      if (options.setAside !== undefined) {
        const seen = register.readings.filter((reading) => reading.readAt.slice(0, 10) <= options.asOf);
        const readings = new Map(seen.map((reading) => [reading.id, reading]));
        const changes = register.meterChanges.filter((change) => change.changedAt <= options.asOf);
        const { setAside } = cleanReadings(seen, changes, { machines: register.machines });
        writeWholeFile(options.setAside, [
          'machine_id,read_at,hours,reason\n',
          ...setAside.map((each) => {
            const reading = readings.get(each.readingId)!;
            return `${reading.machineId},${reading.readAt},${reading.hours},${cell(each.reason)}\n`;
          }),
        ]);
        doubtful = `; ${setAside.length} doubtful readings in ${options.setAside}`;
      }
      process.stdout.write(
        `${forecast.machines.size} machines, ${options.days} days each, in ${options.out}${doubtful}\n`,
      );
    });
}

function* forecastLines(forecast: ReturnType<typeof forecastUsage>): Generator<string> {
  yield 'machine_id,date,p10,p25,p50,p75,p90\n';
  const { originDay } = forecast.model;
  for (const machine of forecast.machines.values()) {
    const { p10, p25, p50, p75, p90 } = machine.quantiles();
    yield p50
      .map(
        (_, day) =>
          `${machine.machineId},${dateOfDay(originDay + 1 + day)},${[p10, p25, p50, p75, p90].map((path) => path[day]!.toFixed(2)).join(',')}\n`,
      )
      .join('');
  }
}

/** A cell of RFC 4180; a leading = + - @ would run as a formula in a spreadsheet. */
function cell(text: string): string {
  const safe = /^[=+\-@\t]/.test(text) ? `'${text}` : text;
  return /[",\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
