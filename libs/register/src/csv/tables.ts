import { MOST_STRETCHES } from '../weekly-windows.js';
import * as column from './columns.js';

/** The files of a register folder and how each of their columns is read. */
export const TABLES = {
  'customers.csv': {
    customer_id: column.identifier(),
    name: column.text({ required: true, max: 200 }),
    billing_email: column.text({ max: 254 }),
    terms_days: column.integer({ min: 0, max: 365, unit: 'days' }),
    tax_exempt: column.yesNo(),
  },
  'sites.csv': {
    site_id: column.identifier(),
    customer_id: column.identifier(),
    name: column.text({ required: true, max: 200 }),
    latitude: column.number({ min: -90, max: 90, unit: 'degrees' }),
    longitude: column.number({ min: -180, max: 180, unit: 'degrees' }),
    access: column.weeklyWindows(),
    setup_minutes: column.integer({ min: 0, max: 480, unit: 'minutes' }),
    max_machines_down: column.integer({ min: 1, max: 1000, unit: 'machines' }),
    notes: column.text(),
    time_zone: column.mayLack(column.timeZone()),
  },
  'machines.csv': {
    machine_id: column.identifier(),
    site_id: column.identifier(),
    class: column.text({ required: true, max: 64 }),
    maker: column.text({ max: 100 }),
    model: column.text({ max: 100 }),
    serial: column.text({ max: 100 }),
    in_service_on: column.optionalDate(),
    spindles: column.integer({ min: 0, max: 20, unit: 'spindles' }),
    severity: column.oneOf(['light', 'normal', 'severe'] as const, 'normal'),
    notes: column.text(),
    retired_on: column.mayLack(column.date()),
    meter_rollover_hours: column.mayLack(column.integer({ min: 1, max: 999_999, unit: 'h' })),
  },
  'technicians.csv': {
    technician_id: column.identifier(),
    name: column.text({ required: true, max: 200 }),
    base_latitude: column.number({ min: -90, max: 90, unit: 'degrees' }),
    base_longitude: column.number({ min: -180, max: 180, unit: 'degrees' }),
    shifts: column.weeklyWindows(MOST_STRETCHES),
    skills: column.list(),
    wage_per_hour: column.cents(1000),
    overtime_per_hour: column.cents(1000),
    max_overtime_minutes: column.integer({ min: 0, max: 480, unit: 'minutes' }),
  },
  'parts.csv': {
    part_id: column.identifier(),
    description: column.text({ required: true }),
    designation: column.text({ max: 100 }),
    unit_price: column.cents(),
    unit_cost: column.cents(),
    on_hand: column.number({ min: 0, max: 1_000_000, unit: 'pieces' }),
    lead_days: column.integer({ min: 0, max: 365, unit: 'days' }),
  },
  'meter_changes.csv': {
    machine_id: column.identifier(),
    changed_at: column.date(),
    old_hours: column.number({ min: 0, max: 999_999, unit: 'h' }),
    new_hours: column.number({ min: 0, max: 999_999, unit: 'h' }),
  },
  'readings.csv': {
    machine_id: column.identifier(),
    read_at: column.localDateTime(),
    hours: column.number({ min: 0, max: 999_999, unit: 'h' }),
    source: column.oneOf(['technician', 'supervisor', 'telematics', 'manager', 'label'] as const),
  },
  'service_history.csv': {
    machine_id: column.identifier(),
    item: column.text({ required: true, max: 64 }),
    slot: column.text({ max: 64 }),
    done_at: column.date(),
    hours: column.optionalNumber({ min: 0, max: 999_999, unit: 'h' }),
    outcome: column.oneOf(['done', 'failed'] as const, 'done'),
    part: column.text({ max: 64 }),
  },
  'blackouts.csv': {
    site_id: column.identifier(),
    from: column.date(),
    to: column.date(),
    reason: column.text(),
  },
  'machine_moves.csv': {
    machine_id: column.identifier(),
    from_site_id: column.identifier(),
    until: column.date(),
  },
  'weather.csv': {
    date: column.date(),
    site_id: column.text({ max: 64 }),
    low_c: column.number({ min: -90, max: 70, unit: '°C' }),
    high_c: column.number({ min: -90, max: 70, unit: '°C' }),
    rain_mm: column.number({ min: 0, max: 2000, unit: 'mm' }),
  },
} as const;

export type TableName = keyof typeof TABLES;
export const OPTIONAL_TABLES: readonly TableName[] = ['blackouts.csv', 'machine_moves.csv', 'weather.csv'];
