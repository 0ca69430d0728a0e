import { z } from 'zod';
import { Clause, text } from './primitives.js';

const FILE_NAMES = [
  'customers.csv',
  'sites.csv',
  'machines.csv',
  'readings.csv',
  'meter_changes.csv',
  'service_history.csv',
  'technicians.csv',
  'parts.csv',
  'blackouts.csv',
  'machine_moves.csv',
  'weather.csv',
] as const;

export const RegisterFiles = z
  .strictObject({ files: z.partialRecord(z.enum(FILE_NAMES), text(4_000_000)) })
  .meta({ id: 'RegisterFiles', description: 'The CSV files of a register, each as text under its name' });

export const RegisterFault = z
  .object({
    file: z.string(),
    line: z.int().meta({ description: '1 = the first line; 0 = the file as a whole' }),
    column: z.string().nullable(),
    message: z.string(),
    clause: Clause.nullable(),
  })
  .meta({ id: 'RegisterFault' });

const ImportCount = z.object({ added: z.int(), changed: z.int(), unchanged: z.int() });
export const RegisterPreview = z
  .object({
    faultCount: z.int(),
    faults: z.array(RegisterFault).meta({ description: 'The first of them; with one fault nothing can be imported' }),
    rows: z.record(z.string(), z.int()).meta({ description: 'Rows read from each file' }),
    counts: z
      .record(z.string(), ImportCount)
      .nullable()
      .meta({ description: 'What importing changes; null with faults' }),
    readingsSetAside: z.int().nullable(),
  })
  .meta({ id: 'RegisterPreview', description: 'What an import would do, or did' });
