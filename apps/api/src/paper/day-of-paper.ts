import type { loadDay } from '../field-day/load-day.js';

/** What sheets are printed from: the same day that a technician's phone reads ahead. */
export type Day = Awaited<ReturnType<typeof loadDay>>;
export type DayVisit = Day['visits'][number];
export type DayMachine = DayVisit['machines'][number];
