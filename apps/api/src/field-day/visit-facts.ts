import { PartUse, PartUseQuery, VisitFactsQuery, WorkTime } from '@deckround/contracts';
import type { Prisma } from '@deckround/store';
import { type Resource, resourceController } from '../register/resource.js';

const ofVisit = ({ visitId }: Record<string, unknown>) => (visitId === undefined ? {} : { visitId });
const ofMachine = ({ machineId }: Record<string, unknown>) => (machineId === undefined ? {} : { machineId });

export const partUses: Resource<Prisma.PartUseGetPayload<object>> = {
  path: 'part-uses',
  name: 'PartUse',
  view: PartUse,
  query: PartUseQuery,
  readers: ['manager', 'technician'],
  writers: [],
  order: 'usedAt',
  orderValue: (key) => new Date(key),
  where: (query) => ({ ...ofVisit(query), ...ofMachine(query) }),
  table: (tx) => tx.partUse,
  toView: (row) => ({ ...row, quantity: String(row.quantity), usedAt: row.usedAt.toISOString() }),
};

const workTimes: Resource<Prisma.WorkTimeGetPayload<object>> = {
  path: 'work-times',
  name: 'WorkTime',
  view: WorkTime,
  query: VisitFactsQuery,
  readers: ['manager', 'technician'],
  writers: [],
  order: 'startedAt',
  orderValue: (key) => new Date(key),
  where: ofVisit,
  table: (tx) => tx.workTime,
  toView: (row) => ({ ...row, startedAt: row.startedAt.toISOString(), endedAt: row.endedAt.toISOString() }),
};

export const PartUsesController = resourceController(partUses);
export const WorkTimesController = resourceController(workTimes);
