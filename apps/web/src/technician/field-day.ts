import { useQuery } from '@tanstack/react-query';
import { Away, api, queryOf } from '../data/api.js';
import { sessions } from '../data/session.js';
import { stored } from '../data/stored.js';
import type { FieldDay, FieldVisit } from '../data/types.js';
import { fieldStore } from '../offline/field-store.js';
import { useWords } from '../words/words.js';
import { changesBetween, type DayChange } from './day-changes.js';
import { carryWork, stopWork } from './work-clock.js';

/** Days read ahead beyond the one that is shown. */
const AHEAD = 3;
const CHOSEN = 'chosen';

/** What the shop has changed in a day since it was read here; shown until it is seen. */
export const dayChanges = stored<readonly DayChange[]>('deckround.day-changes');

/** A day of the technician: from this device at once, from the service when it answers. */
export function useFieldDay(date?: string): { readonly day: FieldDay | undefined; readonly error: unknown } {
  const me = sessions.current().session?.person.id ?? 'nobody';
  const name = date ?? CHOSEN;
  const kept = useQuery({
    queryKey: ['kept-day', me, name],
    queryFn: async () => (await fieldStore.readDay(me, name)) ?? null,
    staleTime: Infinity,
  });
  const { t } = useWords();
  const workAt: WorkAt = (site) => t('kept.work-time', { site });
  const fresh = useQuery({ queryKey: ['field-day', me, name], queryFn: () => readDay(me, date, workAt) });
  const day = fresh.data ?? kept.data ?? undefined;
  // Without a network a day that was never read cannot be shown; one that was, can.
  const error = day === undefined && !kept.isPending ? fresh.error : null;
  return { day, error };
}

/** What the list of records calls the time worked at a site. */
type WorkAt = (site: string) => string;

async function readDay(me: string, date: string | undefined, workAt: WorkAt): Promise<FieldDay> {
  const day = await fetchDay(date);
  await takeOver(me, day, date === undefined, workAt);
  void readAhead(me, day, workAt);
  return day;
}

const fetchDay = (date?: string) => api.get<FieldDay>(`/v1/field-day${queryOf({ date })}`);

/** The shop's plan wins; the technician is told what it changed. */
async function takeOver(me: string, day: FieldDay, isChosen: boolean, workAt: WorkAt): Promise<void> {
  const before = await fieldStore.readDay(me, day.date);
  if (before) await keepWork(before, day, workAt);
  const changes = before ? changesBetween(before, day) : [];
  if (changes.length > 0) dayChanges.write([...(dayChanges.read() ?? []), ...changes]);
  await fieldStore.keepDay(me, day, isChosen);
}

/** The time at a visit that is gone ends, and is sent, unless another visit to its site has taken its place. */
async function keepWork(before: FieldDay, after: FieldDay, workAt: WorkAt): Promise<void> {
  for (const { id, siteId, site } of before.visits) {
    if (visitOf(after, id)) continue;
    const successor = after.visits.find((visit) => visit.siteId === siteId && !visitOf(before, visit.id));
    if (successor) carryWork(id, successor.id);
    else await stopWork(id, workAt(site.name));
  }
}

async function readAhead(me: string, day: FieldDay, workAt: WorkAt): Promise<void> {
  try {
    for (const date of day.dates.filter((each) => each > day.date).slice(0, AHEAD)) {
      if ((await fieldStore.readDay(me, date)) === undefined) await takeOver(me, await fetchDay(date), false, workAt);
    }
  } catch (error) {
    if (!(error instanceof Away)) throw error;
  }
}

export const visitOf = (day: FieldDay, visitId: string): FieldVisit | undefined =>
  day.visits.find((visit) => visit.id === visitId);
