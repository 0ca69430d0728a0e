import {
  Absence,
  AbsenceCreate,
  Id,
  PageQuery,
  Technician,
  TechnicianChanges,
  TechnicianCreate,
} from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { clockOf, MOST_STRETCHES, minuteOf } from '@deckround/register';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import { type Resource, resourceController } from './resource.js';
import { given, requireTimeZone } from './values.js';
import { checkWindows, toWireWindow, type WireWindow } from './weekly-windows.js';

type Row = Prisma.TechnicianGetPayload<{ include: { technicianShifts: true; technicianSkills: true } }>;

const technicians: Resource<Row> = {
  path: 'technicians',
  name: 'Technician',
  view: Technician,
  create: TechnicianCreate,
  changes: TechnicianChanges,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'code',
  table: (tx) => tx.technician,
  include: { technicianShifts: true, technicianSkills: true },
  toView: ({ technicianShifts, technicianSkills, ...row }) => ({
    ...row,
    shifts: technicianShifts
      .map((each) => toWireWindow(each.weekday, each.startMinute, each.endMinute))
      .sort((a, b) => a.weekday - b.weekday || (a.from < b.from ? -1 : 1)),
    skills: technicianSkills.map((each) => each.skill).sort(),
    lunchEarliest: clockOf(row.lunchEarliestMinute),
    lunchLatest: clockOf(row.lunchLatestMinute),
  }),
  insert: async (tx, actor, body: z.infer<typeof TechnicianCreate>) => {
    const { shifts, skills, lunchEarliest, lunchLatest, ...fields } = body;
    requireTimeZone(fields.timeZone);
    const lunch = { lunchEarliestMinute: minuteOf(lunchEarliest), lunchLatestMinute: minuteOf(lunchLatest) };
    checkLunch(lunch);
    const { id } = await tx.technician.create({ data: { shopId: actor.shopId, ...fields, ...lunch } });
    await writeShifts(tx, actor.shopId, id, shifts);
    await writeSkills(tx, actor.shopId, id, skills);
    return id;
  },
  update: async (tx, actor, row, body: z.infer<typeof TechnicianChanges>) => {
    const { shifts, skills, lunchEarliest, lunchLatest, ...fields } = body;
    if (fields.timeZone !== undefined) requireTimeZone(fields.timeZone);
    const lunch = given({
      lunchEarliestMinute: lunchEarliest === undefined ? undefined : minuteOf(lunchEarliest),
      lunchLatestMinute: lunchLatest === undefined ? undefined : minuteOf(lunchLatest),
    });
    checkLunch({ ...row, ...lunch });
    await tx.technician.update({ where: { id: row.id }, data: { ...fields, ...lunch, version: { increment: 1 } } });
    if (shifts !== undefined) await writeShifts(tx, actor.shopId, row.id, shifts);
    if (skills !== undefined) await writeSkills(tx, actor.shopId, row.id, skills);
  },
};

/** @throws DomainError invalid-input when lunch would have to begin before it may */
function checkLunch({
  lunchEarliestMinute,
  lunchLatestMinute,
}: Pick<Row, 'lunchEarliestMinute' | 'lunchLatestMinute'>): void {
  if (lunchEarliestMinute <= lunchLatestMinute) return;
  throw new DomainError('invalid-input', 'The hours of lunch cannot be used.', [
    { pointer: '/lunchLatest', detail: 'it comes before lunch may begin' },
  ]);
}

async function writeShifts(tx: Tx, shopId: string, technicianId: string, shifts: readonly WireWindow[]): Promise<void> {
  const windows = checkWindows(shifts, '/shifts', MOST_STRETCHES);
  await tx.technicianShift.deleteMany({ where: { technicianId } });
  await tx.technicianShift.createMany({ data: windows.map((window) => ({ shopId, technicianId, ...window })) });
}

async function writeSkills(tx: Tx, shopId: string, technicianId: string, skills: readonly string[]): Promise<void> {
  await tx.technicianSkill.deleteMany({ where: { technicianId } });
  await tx.technicianSkill.createMany({ data: [...new Set(skills)].map((skill) => ({ shopId, technicianId, skill })) });
}

const absences: Resource<Prisma.TechnicianAbsenceGetPayload<object>> = {
  path: 'absences',
  name: 'Absence',
  view: Absence,
  query: PageQuery.extend({ technicianId: Id.optional() }),
  create: AbsenceCreate,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'fromDate',
  orderValue: (key) => new Date(key),
  where: ({ technicianId }) => (technicianId === undefined ? {} : { technicianId }),
  table: (tx) => tx.technicianAbsence,
  toView: (row) => ({
    id: row.id,
    technicianId: row.technicianId,
    from: dateText(row.fromDate),
    to: dateText(row.toDate),
    reason: row.reason ?? '',
  }),
  insert: async (tx, actor, body: z.infer<typeof AbsenceCreate>) => {
    const { from, to, ...rest } = body;
    const row = await tx.technicianAbsence.create({
      data: { shopId: actor.shopId, ...rest, fromDate: dateColumn(from), toDate: dateColumn(to) },
    });
    return row.id;
  },
  remove: async (tx, _actor, row) => {
    await tx.technicianAbsence.delete({ where: { id: row.id } });
  },
};

export const TechniciansController = resourceController(technicians);
export const AbsencesController = resourceController(absences);
