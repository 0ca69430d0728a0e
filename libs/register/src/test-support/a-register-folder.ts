import type { RegisterSource } from '../csv/read-register.js';

export type RegisterFiles = Readonly<Record<string, string | Uint8Array>>;

/** The smallest register with one row in every file: one customer, site, machine, technician and part. */
export function aRegisterFolder(changes: Readonly<Record<string, string | Uint8Array | null>> = {}): RegisterFiles {
  const files: Record<string, string | Uint8Array | null> = {
    'customers.csv': lines('customer_id,name,billing_email,terms_days,tax_exempt', 'C1,Dapple Parks,,30,no'),
    'sites.csv': lines(
      'site_id,customer_id,name,latitude,longitude,access,setup_minutes,max_machines_down,notes',
      'S1,C1,North Park,41.6,-93.6,Mon-Fri 07:00-15:30,10,1,gate at the rear',
    ),
    'machines.csv': lines(
      'machine_id,site_id,class,maker,model,serial,in_service_on,spindles,severity,notes',
      'M1,S1,zero-turn,,Z3,SN1,2012-04-01,3,normal,',
    ),
    'technicians.csv': lines(
      'technician_id,name,base_latitude,base_longitude,shifts,skills,wage_per_hour,overtime_per_hour,max_overtime_minutes',
      'T1,Technician 1,41.6,-93.6,Mon-Fri 07:00-16:00,mechanical;electrical,32,48,90',
    ),
    'parts.csv': lines(
      'part_id,description,designation,unit_price,unit_cost,on_hand,lead_days',
      'BLT-DECK,deck drive belt,B,61.00,33.00,2,5',
    ),
    'meter_changes.csv': lines('machine_id,changed_at,old_hours,new_hours', 'M1,2013-08-01,412.6,0.0'),
    'readings.csv': lines('machine_id,read_at,hours,source', 'M1,2013-06-03T07:45:00,350.2,technician'),
    'service_history.csv': lines(
      'machine_id,item,slot,done_at,hours,outcome,part',
      'M1,sharpen-blades,,2013-06-03,350.2,done,',
    ),
    ...changes,
  };
  return Object.fromEntries(
    Object.entries(files).filter((entry): entry is [string, string | Uint8Array] => entry[1] !== null),
  );
}

/** One line of text each, the last one ended too. */
export function lines(...all: readonly string[]): string {
  return `${all.join('\n')}\n`;
}

/** The same files as a source that hands them out in pieces of `pieceBytes`. */
export function memorySource(files: RegisterFiles, pieceBytes = 64 * 1024): RegisterSource {
  return {
    open: (file) => {
      const content = files[file];
      return content === undefined ? null : piecesOf(content, pieceBytes);
    },
  };
}

export async function* piecesOf(content: string | Uint8Array, pieceBytes = 64 * 1024): AsyncGenerator<Uint8Array> {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  for (let at = 0; at < bytes.length; at += pieceBytes) yield bytes.subarray(at, at + pieceBytes);
}
