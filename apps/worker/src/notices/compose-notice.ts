import { writeCalendar } from '@deckround/calendar';
import { visitCalendar } from '@deckround/register-store';
import type { NoticeType, Prisma, Tx } from '@deckround/store';
import { NOTICE_WORDS, type NoticeFacts, type NoticeLanguage, type NoticeWords } from './words.js';

export interface ComposedNotice {
  /** Senders show the shop's name. */
  readonly fromName: string;
  readonly to: { readonly name: string; readonly address: string };
  readonly subject: string;
  readonly text: string;
  /** iCalendar of the visit; null for a stopgap. */
  readonly calendar: string | null;
}

type Row = Prisma.NoticeGetPayload<{
  include: { contact: { include: { site: { include: { shop: true } } } }; event: true };
}>;

/** The message to one contact, as things stand now. null = its subject is gone. */
export async function composeNotice(tx: Tx, noticeId: string): Promise<ComposedNotice | null> {
  const row = await tx.notice.findUnique({
    where: { id: noticeId },
    include: { contact: { include: { site: { include: { shop: true } } } }, event: true },
  });
  if (!row) return null;
  const { contact } = row;
  const type = row.event.type as NoticeType;
  const words = NOTICE_WORDS[contact.language as NoticeLanguage];
  const facts =
    type === 'stopgap.limit-near' ? await stopgapFacts(tx, row, words.locale) : await visitFacts(tx, row, words, type);
  if (facts === null) return null;
  const calendar = type === 'stopgap.limit-near' ? null : await visitCalendar(tx, row.subjectId);
  return {
    fromName: contact.site.shop.name,
    to: { name: contact.name, address: contact.email },
    subject: words.subject[type](facts),
    text: `${[...words.body[type](facts), words.footer(facts)].join('\n\n')}\n`,
    calendar: calendar && writeCalendar(calendar),
  };
}

function none({ contact: { site } }: Row) {
  return { shop: site.shop.name, site: site.name, promised: null, time: '', work: [], left: [], doneWith: [] };
}

async function visitFacts(tx: Tx, row: Row, words: NoticeWords, type: NoticeType): Promise<NoticeFacts | null> {
  const visit = await tx.visit.findUnique({
    where: { id: row.subjectId },
    include: { visitItems: { include: { machine: true }, orderBy: [{ machine: { code: 'asc' } }, { title: 'asc' }] } },
  });
  if (!visit) return null;
  const { timeZone } = row.contact.site;
  const { locale } = words;
  const time = clock(locale, timeZone);
  const of = (states: readonly string[]) =>
    visit.visitItems
      .filter((item) => states.includes(item.state))
      .map((item) => `${item.machine.code}: ${words.work(item.title)}`);
  const isDone = type === 'visit.done';
  const slotOf = ({ promisedFrom, promisedTo, startAt }: typeof visit) => ({
    promised: promisedFrom && promisedTo ? { from: time.format(promisedFrom), to: time.format(promisedTo) } : null,
    time: time.format(startAt),
  });
  const taken = type === 'visit.cancelled' ? await visitsOfWork(tx, row) : [];
  return {
    ...none(row),
    day: day(locale, timeZone).format(isDone ? (visit.finishedAt ?? visit.startAt) : visit.startAt),
    ...slotOf(visit),
    doneWith: taken.map((other) => ({ day: day(locale, timeZone).format(other.startAt), ...slotOf(other) })),
    work: of(isDone ? ['done'] : ['planned']),
    left: of(['skipped']),
    ...{ machine: '', repair: '', repairDay: null },
  };
}

/** The visits that were given the work of a cancelled one, as far as they still stand. */
async function visitsOfWork(tx: Tx, { event }: Row) {
  const { workTo = [] } = JSON.parse(event.body).data as { workTo?: string[] };
  return tx.visit.findMany({
    where: { id: { in: workTo }, state: { not: 'cancelled' } },
    include: { visitItems: { include: { machine: true } } },
    orderBy: { startAt: 'asc' },
  });
}

async function stopgapFacts(tx: Tx, row: Row, locale: string): Promise<NoticeFacts | null> {
  const stopgap = await tx.stopgap.findUnique({
    where: { id: row.subjectId },
    include: {
      machine: true,
      visitItems: { where: { visit: { state: { in: ['proposed', 'confirmed'] } } }, include: { visit: true } },
    },
  });
  if (stopgap?.closedOn !== null) return null;
  const { limitOn } = JSON.parse(row.event.body).data as { limitOn: string };
  const { timeZone } = row.contact.site;
  const visit = stopgap.visitItems.map((item) => item.visit).sort((a, b) => (a.startAt < b.startAt ? -1 : 1))[0];
  return {
    ...none(row),
    day: day(locale, 'UTC').format(new Date(`${limitOn}T00:00:00Z`)),
    machine: stopgap.machine.code,
    repair: stopgap.description,
    repairDay: visit ? day(locale, timeZone).format(visit.startAt) : null,
  };
}

const day = (locale: string, timeZone: string) =>
  new Intl.DateTimeFormat(locale, { timeZone, weekday: 'long', month: 'long', day: 'numeric' });
const clock = (locale: string, timeZone: string) =>
  new Intl.DateTimeFormat(locale, { timeZone, hour: 'numeric', minute: '2-digit' });
