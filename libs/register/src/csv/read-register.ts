import { type Clause, clause } from '@deckround/planning';
import type { Customer, Machine, Part, Register, ShopSettings, Site, Technician } from '../register.js';
import { DEFAULT_SHOP, starterClasses } from '../shop-defaults.js';
import { FaultList, type RegisterFault } from './fault.js';
import { type Columns, type Row, readTable } from './read-table.js';
import { OPTIONAL_TABLES, TABLES, type TableName } from './tables.js';

/** Where the files of a register come from: a folder, an upload, a test. null = there is no such file. */
export interface RegisterSource {
  open(file: string): AsyncIterable<Uint8Array> | null;
}

export interface RegisterReading {
  /** null when there is any fault. */
  readonly register: Register | null;
  readonly faults: readonly RegisterFault[];
  readonly faultCount: number;
  /** Rows of each file. */
  readonly counts: Readonly<Record<string, number>>;
}

/**
 * Reads a folder of CSV files into a register, checking every cell and every reference. All faults are gathered; with
 * one fault there is no register.
 */
export async function readRegister(
  source: RegisterSource,
  shop: ShopSettings = DEFAULT_SHOP,
): Promise<RegisterReading> {
  return new RegisterReader(source, shop).read();
}

class RegisterReader {
  private readonly faults = new FaultList();
  private readonly counts: Record<string, number> = {};
  /** Files that are not there or broke off: rows that others name may be missing from them. */
  private readonly unusable = new Set<string>();
  /** `machines.csv M0042`: rows that are there but have a fault of their own. */
  private readonly faultyRows = new Set<string>();
  private readonly classes = starterClasses();

  constructor(
    private readonly source: RegisterSource,
    private readonly shop: ShopSettings,
  ) {}

  async read(): Promise<RegisterReading> {
    const customers = await this.customers();
    const sites = await this.sites(customers);
    const machines = await this.machines(sites);
    const technicians = await this.technicians();
    const parts = await this.parts();
    const meterChanges = await this.meterChanges(machines);
    const readings = await this.readings(machines);
    const completions = await this.completions(machines, parts);
    const blackouts = await this.blackouts(sites);
    const moves = await this.moves(machines, sites);
    const weather = await this.weather(sites);
    const sound = this.faults.total === 0;
    const register: Register | null = sound
      ? {
          shop: this.shop,
          customers: [...customers.values()],
          sites: [...sites.values()].map((site) => ({ ...site, blackouts: blackouts.get(site.id) ?? [] })),
          machines: [...machines.values()],
          technicians: [...technicians.values()],
          parts: [...parts.values()],
          meterChanges,
          readings,
          completions,
          moves,
          weather,
          classes: this.classes,
          overrides: [],
          findings: [],
          stopgaps: [],
          roadCalls: [],
          bars: [],
          events: [],
          promises: [],
          previous: [],
        }
      : null;
    return { register, faults: this.faults.kept, faultCount: this.faults.total, counts: this.counts };
  }

  private async customers(): Promise<Map<string, Customer>> {
    return this.entities('customers.csv', 'customer_id', (row) => ({
      id: row.customer_id,
      name: row.name,
      billingEmail: row.billing_email,
      termsDays: row.terms_days,
      taxExempt: row.tax_exempt,
    }));
  }

  private async sites(customers: ReadonlyMap<string, Customer>): Promise<Map<string, Site>> {
    return this.entities('sites.csv', 'site_id', (row, refuse) => {
      if (this.isUnknown('customers.csv', row.customer_id, customers))
        refuse(
          'customer_id',
          `"${row.customer_id}" is not in customers.csv: add the customer or correct it`,
          clause('no-customer', { cell: row.customer_id }),
        );
      return {
        id: row.site_id,
        customerId: row.customer_id,
        name: row.name,
        latitude: row.latitude,
        longitude: row.longitude,
        timeZone: row.time_zone ?? this.shop.timeZone,
        ...(row.time_zone === null && { zoneUntold: true as const }),
        access: row.access,
        blackouts: [],
        setupMinutes: row.setup_minutes,
        visitFeeCents: 0,
        maxMachinesDown: row.max_machines_down,
        downRule: 'one-by-one',
        preferredTechnicianId: null,
        preferenceCents: 0,
        notes: row.notes,
      };
    });
  }

  private async machines(sites: ReadonlyMap<string, Site>): Promise<Map<string, Machine>> {
    const known = this.classes.map((each) => each.code);
    return this.entities('machines.csv', 'machine_id', (row, refuse) => {
      if (this.isUnknown('sites.csv', row.site_id, sites))
        refuse(
          'site_id',
          `"${row.site_id}" is not in sites.csv: add the site or correct it`,
          clause('no-site', { cell: row.site_id }),
        );
      if (!known.includes(row.class))
        refuse(
          'class',
          `"${row.class}" is not a machine class: use one of ${known.join(', ')}`,
          clause('no-class', { cell: row.class, choices: known.join(', ') }),
        );
      const { in_service_on: from, retired_on: to } = row;
      if (from !== null && to !== null && to < from)
        refuse(
          'retired_on',
          `${to} lies before ${from}: the first day comes first`,
          clause('days-turned', { to, from }),
        );
      return {
        id: row.machine_id,
        code: row.machine_id,
        siteId: row.site_id,
        machineClass: row.class,
        maker: row.maker,
        model: row.model,
        serial: row.serial,
        inServiceOn: row.in_service_on,
        spindles: row.spindles,
        severity: row.severity,
        notes: row.notes,
        retiredOn: row.retired_on,
        meterRolloverHours: row.meter_rollover_hours,
      };
    });
  }

  private async technicians(): Promise<Map<string, Technician>> {
    return this.entities('technicians.csv', 'technician_id', (row) => ({
      id: row.technician_id,
      name: row.name,
      latitude: row.base_latitude,
      longitude: row.base_longitude,
      timeZone: this.shop.timeZone,
      zoneUntold: true,
      shifts: row.shifts,
      absences: [],
      skills: row.skills,
      wageCentsPerHour: row.wage_per_hour,
      overtimeCentsPerHour: row.overtime_per_hour,
      maxOvertimeMinutes: row.max_overtime_minutes,
      lunch: { minutes: 30, earliestMinute: 11 * 60, latestMinute: 13 * 60 + 30 },
    }));
  }

  private async parts(): Promise<Map<string, Part>> {
    return this.entities('parts.csv', 'part_id', (row) => ({
      id: row.part_id,
      code: row.part_id,
      description: row.description,
      designation: row.designation,
      unitPriceCents: row.unit_price,
      unitCostCents: row.unit_cost,
      onHand: row.on_hand,
      leadDays: row.lead_days,
      arrivals: [],
    }));
  }

  private async meterChanges(machines: ReadonlyMap<string, Machine>): Promise<Register['meterChanges']> {
    const file = 'meter_changes.csv';
    const seen = new Map<string, number>();
    const changes: Register['meterChanges'][number][] = [];
    await this.table(file, (row, line) => {
      if (!this.machineIsKnown(file, line, row.machine_id, machines)) return;
      const key = `${row.machine_id} ${row.changed_at}`;
      if (
        this.isRepeated(
          file,
          line,
          'changed_at',
          `a second meter change of ${row.machine_id} on ${row.changed_at}`,
          key,
          seen,
        )
      )
        return;
      changes.push({
        machineId: row.machine_id,
        changedAt: row.changed_at,
        oldHours: row.old_hours,
        newHours: row.new_hours,
      });
    });
    return changes;
  }

  private async readings(machines: ReadonlyMap<string, Machine>): Promise<Register['readings']> {
    const file = 'readings.csv';
    const readings = new Map<string, Register['readings'][number]>();
    await this.table(file, (row, line) => {
      if (!this.machineIsKnown(file, line, row.machine_id, machines)) return;
      // The same reading twice is the same reading: telematics senders repeat themselves.
      const id = readingKey(row.machine_id, row.read_at, row.source, row.hours);
      readings.set(id, { id, machineId: row.machine_id, readAt: row.read_at, hours: row.hours, source: row.source });
    });
    return [...readings.values()];
  }

  private async completions(
    machines: ReadonlyMap<string, Machine>,
    parts: ReadonlyMap<string, Part>,
  ): Promise<Register['completions']> {
    const file = 'service_history.csv';
    const itemsOf = new Map(this.classes.map((each) => [each.code, new Set(each.items.map((item) => item.code))]));
    const completions = new Map<string, Register['completions'][number]>();
    const lines = new Map<string, number>();
    await this.table(file, (row, line) => {
      if (!this.machineIsKnown(file, line, row.machine_id, machines)) return;
      const machine = machines.get(row.machine_id)!;
      const items = itemsOf.get(machine.machineClass);
      if (items && !items.has(row.item)) {
        this.faults.add({
          file,
          line,
          column: 'item',
          message: `"${row.item}" is not a service item of ${machine.machineClass}: use one of ${[...items].join(', ')}`,
          clause: clause('no-item', { cell: row.item, class: machine.machineClass, choices: [...items].join(', ') }),
        });
        return;
      }
      if (row.part !== '' && this.isUnknown('parts.csv', row.part, parts)) {
        this.faults.add({
          file,
          line,
          column: 'part',
          message: `"${row.part}" is not in parts.csv: add the part or leave it empty`,
          clause: clause('no-part', { cell: row.part }),
        });
        return;
      }
      const key = `${row.machine_id}|${row.item}|${row.slot}|${row.done_at}`;
      const completion = {
        machineId: row.machine_id,
        code: row.item,
        slot: row.slot === '' ? null : row.slot,
        doneOn: row.done_at,
        meterHours: row.hours,
        outcome: row.outcome,
        part: row.part === '' ? null : row.part,
      };
      const before = completions.get(key);
      if (before && isSameRow(before, completion)) return;
      const what = `${row.item} on ${row.machine_id}, done on ${row.done_at},`;
      if (!this.isRepeated(file, line, 'done_at', what, key, lines)) completions.set(key, completion);
    });
    return [...completions.values()];
  }

  private async moves(
    machines: ReadonlyMap<string, Machine>,
    sites: ReadonlyMap<string, Site>,
  ): Promise<Register['moves']> {
    const file = 'machine_moves.csv';
    const moves: Register['moves'][number][] = [];
    const lines = new Map<string, number>();
    await this.table(file, (row, line) => {
      const { machine_id: machineId, from_site_id: fromSiteId, until } = row;
      if (!this.machineIsKnown(file, line, machineId, machines)) return;
      if (!this.siteIsKnown(file, line, 'from_site_id', fromSiteId, sites)) return;
      if (this.isRepeated(file, line, 'until', `a move of ${machineId} on ${until}`, `${machineId}|${until}`, lines))
        return;
      moves.push({ machineId, fromSiteId, until });
    });
    return moves;
  }

  private async weather(sites: ReadonlyMap<string, Site>): Promise<Register['weather']> {
    const file = 'weather.csv';
    const days: Register['weather'][number][] = [];
    const lines = new Map<string, number>();
    await this.table(file, (row, line) => {
      const siteId = row.site_id === '' ? null : row.site_id;
      if (siteId !== null && !this.siteIsKnown(file, line, 'site_id', siteId, sites)) return;
      if (row.low_c > row.high_c) {
        const message = `${row.low_c} °C is above the day's high of ${row.high_c} °C: exchange or correct them`;
        const values = { low: row.low_c, high: row.high_c };
        this.faults.add({ file, line, column: 'low_c', message, clause: clause('low-above-high', values) });
        return;
      }
      const what = `the weather of ${row.date}`;
      if (this.isRepeated(file, line, 'date', what, `${siteId}|${row.date}`, lines)) return;
      days.push({ siteId, date: row.date, lowC: row.low_c, highC: row.high_c, rainMm: row.rain_mm });
    });
    return days;
  }

  private siteIsKnown(
    file: string,
    line: number,
    column: string,
    siteId: string,
    sites: ReadonlyMap<string, Site>,
  ): boolean {
    if (sites.has(siteId)) return true;
    if (!this.isUnknown('sites.csv', siteId, sites)) return false;
    const message = `"${siteId}" is not in sites.csv: add the site or correct it`;
    this.faults.add({ file, line, column, message, clause: clause('no-site', { cell: siteId }) });
    return false;
  }

  private async blackouts(sites: ReadonlyMap<string, Site>): Promise<Map<string, Site['blackouts'][number][]>> {
    const file = 'blackouts.csv';
    const blackouts = new Map<string, Site['blackouts'][number][]>();
    await this.table(file, (row, line) => {
      if (!this.siteIsKnown(file, line, 'site_id', row.site_id, sites)) return;
      if (row.from > row.to) {
        this.faults.add({
          file,
          line,
          column: 'to',
          message: `${row.to} lies before ${row.from}: the first day comes first`,
          clause: clause('days-turned', { to: row.to, from: row.from }),
        });
      } else {
        const range = { from: row.from, to: row.to, reason: row.reason };
        blackouts.set(row.site_id, [...(blackouts.get(row.site_id) ?? []), range]);
      }
    });
    return blackouts;
  }

  private async entities<N extends TableName, T extends { id: string }>(
    file: N,
    idColumn: string,
    build: (row: Row<(typeof TABLES)[N]>, refuse: (column: string, message: string, clause: Clause) => void) => T,
  ): Promise<Map<string, T>> {
    const found = new Map<string, T>();
    const lines = new Map<string, number>();
    await this.table(
      file,
      (row, line) => {
        const entity = build(row, (column, message, clause) =>
          this.faults.add({ file, line, column, message, clause }),
        );
        if (this.isRepeated(file, line, idColumn, `"${entity.id}"`, entity.id, lines)) return;
        found.set(entity.id, entity);
      },
      (cell) => this.faultyRows.add(`${file} ${cell(idColumn)}`),
    );
    return found;
  }

  private isRepeated(
    file: string,
    line: number,
    column: string,
    what: string,
    key: string,
    seen: Map<string, number>,
  ): boolean {
    const before = seen.get(key);
    if (before === undefined) {
      seen.set(key, line);
      return false;
    }
    this.faults.add({
      file,
      line,
      column,
      message: `${what} stands already in line ${before}: remove or renumber one of them`,
      // The row that was found twice is named by its place.
      clause: clause('row-twice', { line: String(before) }),
    });
    return true;
  }

  /**
   * Whether a row names something that is certainly not there. One message about an unusable machines.csv, or about the
   * machine's own row, says more than one for each of its readings.
   */
  private isUnknown(file: TableName, id: string, known: ReadonlyMap<string, unknown>): boolean {
    return !known.has(id) && !this.unusable.has(file) && !this.faultyRows.has(`${file} ${id}`);
  }

  private machineIsKnown(
    file: string,
    line: number,
    machineId: string,
    machines: ReadonlyMap<string, Machine>,
  ): boolean {
    if (machines.has(machineId)) return true;
    if (!this.isUnknown('machines.csv', machineId, machines)) return false;
    this.faults.add({
      file,
      line,
      column: 'machine_id',
      message: `"${machineId}" is not in machines.csv: add the machine or correct it`,
      clause: clause('no-machine', { cell: machineId }),
    });
    return false;
  }

  private async table<N extends TableName>(
    file: N,
    onRow: (row: Row<(typeof TABLES)[N]>, line: number) => void,
    onFaultyRow?: (cell: (name: string) => string) => void,
  ): Promise<void> {
    this.counts[file] = 0;
    const bytes = this.source.open(file);
    if (bytes === null) {
      if (!OPTIONAL_TABLES.includes(file)) {
        const columns = Object.entries(TABLES[file] as Columns).filter(([, each]) => !each.optional);
        this.unusable.add(file);
        this.faults.add({
          file,
          line: 0,
          column: null,
          message: `is missing: put it into the folder, with the first line ${columns.map(([name]) => name).join(',')}`,
          clause: clause('file-missing', { columns: columns.map(([name]) => name).join(',') }),
        });
      }
      return;
    }
    const isWhole = await readTable(
      file,
      bytes,
      TABLES[file] as Columns,
      this.faults,
      (row, line) => {
        this.counts[file]! += 1;
        onRow(row as Row<(typeof TABLES)[N]>, line);
      },
      onFaultyRow,
    );
    if (!isWhole) this.unusable.add(file);
  }
}

function isSameRow(a: object, b: object): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** What makes two readings the same one. */
export function readingKey(machineId: string, readAt: string, source: string, hours: number): string {
  return `${machineId}|${readAt}|${source}|${hours}`;
}
