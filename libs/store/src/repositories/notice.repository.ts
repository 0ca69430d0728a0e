import type { Tx } from '../store.js';

/** What a contact of a site can be told of by e-mail. */
export const NOTICE_TYPES = [
  'visit.promised',
  'visit.moved',
  'visit.cancelled',
  'visit.done',
  'stopgap.limit-near',
] as const;
export type NoticeType = (typeof NOTICE_TYPES)[number];

export interface NoticeSubject {
  readonly siteId: string;
  /** The visit or the stopgap. */
  readonly subjectId: string;
}

/** The site and the subject of an event that contacts can be told of; null for any other event. */
export function noticeSubject(type: string, data: object): NoticeSubject | null {
  if (!NOTICE_TYPES.some((each) => each === type)) return null;
  const { siteId, visitId, stopgapId } = data as { siteId?: string; visitId?: string; stopgapId?: string };
  const subjectId = visitId ?? stopgapId;
  return siteId === undefined || subjectId === undefined ? null : { siteId, subjectId };
}

export function contactsFor(tx: Tx, type: string, { siteId }: NoticeSubject): Promise<{ id: string }[]> {
  return tx.siteContact.findMany({ where: { siteId, notices: { has: type } }, select: { id: true } });
}

/** One notice a contact. An older one of the same subject that still waits is not sent any more: the newer says it all. */
export async function addNotices(
  tx: Tx,
  shopId: string,
  eventId: string,
  { subjectId }: NoticeSubject,
  contacts: readonly { id: string }[],
  now: Date,
): Promise<void> {
  const contactIds = contacts.map((contact) => contact.id);
  await tx.notice.updateMany({
    where: { contactId: { in: contactIds }, subjectId, state: 'waiting' },
    data: { state: 'superseded' },
  });
  await tx.notice.createMany({
    data: contactIds.map((contactId) => ({ shopId, contactId, eventId, subjectId, nextAttemptAt: now })),
  });
}

/** Shops that have a notice due. */
export function findShopsWithNotices(tx: Tx): Promise<{ shopId: string }[]> {
  return tx.$queryRaw`select distinct shop_id as "shopId" from notice where state = 'waiting' and next_attempt_at <= now()`;
}

/** Takes due notices, the oldest first: nobody else gets them for `leaseSeconds`. @returns their ids */
export async function claimNotices(tx: Tx, limit: number, leaseSeconds: number): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    update notice set attempts = attempts + 1, next_attempt_at = now() + make_interval(secs => ${leaseSeconds})
    where id in (
      select id from notice where state = 'waiting' and next_attempt_at <= now()
      order by next_attempt_at, id limit ${limit} for update skip locked)
    returning id`;
  return rows.map((row) => row.id);
}

/** Puts a notice off, by the database's clock, as claims go. */
export async function postponeNotice(tx: Tx, id: string, error: string, pauseSeconds: number): Promise<void> {
  await tx.$executeRaw`
    update notice set last_error = ${error}, next_attempt_at = now() + make_interval(secs => ${pauseSeconds})
    where id = ${id}::uuid and state = 'waiting'`;
}

export interface NearLimit {
  readonly stopgapId: string;
  readonly shopId: string;
}

/**
 * Open stopgaps whose limit (the date told, or the early end of when the hours run out) comes within `days` of the
 * shop's today, and whose contacts have not been told.
 */
export function findNearLimits(tx: Tx, now: Date, days: number): Promise<NearLimit[]> {
  return tx.$queryRaw`
    select stopgap.id as "stopgapId", stopgap.shop_id as "shopId"
    from stopgap join shop on shop.id = stopgap.shop_id
    left join lateral (
      select min(p10) as p10 from due_forecast where stopgap_id = stopgap.id and stopgap.limit_hours is not null
    ) due on true
    where stopgap.closed_on is null and stopgap.limit_told_at is null
      and least(stopgap.limit_on, due.p10) <= (${now}::timestamptz at time zone shop.time_zone)::date + shop.clock_shift_days + ${days}::integer`;
}
