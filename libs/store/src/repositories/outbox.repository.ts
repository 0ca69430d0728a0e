import type { Tx } from '../store.js';
import { addNotices, contactsFor, noticeSubject } from './notice.repository.js';

export const EVENT_TYPES = [
  'visit.promised',
  'visit.moved',
  'visit.cancelled',
  'visit.done',
  'stopgap.recorded',
  'stopgap.limit-near',
  'reading.set-aside',
  'document.issued',
  'document.credited',
] as const;
export type EventType = (typeof EVENT_TYPES)[number];

/**
 * Tells every endpoint, and every contact of the site, that wants it of something that happened, in the transaction that
 * makes it true. The data are thin: ids and states, no names or addresses; the receiver reads the rest with its own key.
 */
export async function emitEvent(
  tx: Tx,
  shopId: string,
  type: EventType | 'endpoint.test',
  data: object,
  now: Date,
  onlyTo?: string,
): Promise<void> {
  const body = JSON.stringify({ type, timestamp: now.toISOString(), data });
  const endpoints = await tx.webhookEndpoint.findMany({
    where: onlyTo === undefined ? { OR: [{ types: { has: type } }, { types: { isEmpty: true } }] } : { id: onlyTo },
    select: { id: true },
  });
  const subject = onlyTo === undefined ? noticeSubject(type, data) : null;
  const contacts = subject === null ? [] : await contactsFor(tx, type, subject);
  if (endpoints.length + contacts.length === 0) return;
  const event = await tx.outboxEvent.create({ data: { shopId, type, occurredAt: now, body } });
  await tx.webhookDelivery.createMany({
    data: endpoints.map(({ id }) => ({ shopId, endpointId: id, eventId: event.id, nextAttemptAt: now })),
  });
  if (subject && contacts.length > 0) await addNotices(tx, shopId, event.id, subject, contacts, now);
}

/** Endpoints that have something due, across shops. */
export function findDueEndpoints(tx: Tx): Promise<{ id: string; shopId: string }[]> {
  return tx.$queryRaw`
    select distinct e.id, e.shop_id as "shopId" from webhook_endpoint e join webhook_delivery d on d.endpoint_id = e.id
    where e.state = 'active' and d.state = 'waiting' and d.next_attempt_at <= now()`;
}

export interface DueDelivery {
  readonly id: string;
  readonly eventId: string;
  readonly attempts: number;
  readonly body: string;
}

/**
 * Takes due deliveries of an endpoint, the oldest first: nobody else gets them for `leaseSeconds`. If this process is
 * killed meanwhile they fall due again.
 */
export function claimDeliveries(
  tx: Tx,
  endpointId: string,
  limit: number,
  leaseSeconds: number,
): Promise<DueDelivery[]> {
  return tx.$queryRaw`
    update webhook_delivery d set attempts = d.attempts + 1, next_attempt_at = now() + make_interval(secs => ${leaseSeconds})
    from outbox_event v
    where v.id = d.event_id and d.id in (
      select id from webhook_delivery
      where endpoint_id = ${endpointId}::uuid and state = 'waiting' and next_attempt_at <= now()
      order by next_attempt_at, id limit ${limit} for update skip locked)
    returning d.id, d.event_id as "eventId", d.attempts, v.body`;
}

/** What came of an attempt that was no success. */
export interface FailedAttempt {
  readonly status: number | null;
  readonly error: string | null;
  readonly pauseSeconds: number;
}

/**
 * Puts a delivery off, by the clock that claims go by: the database's. A shop whose own clock is stopped would find it due
 * at once, without end.
 */
export async function postponeDelivery(
  tx: Tx,
  id: string,
  { status, error, pauseSeconds }: FailedAttempt,
): Promise<void> {
  await tx.$executeRaw`
    update webhook_delivery set last_status = ${status}, last_error = ${error},
      next_attempt_at = now() + make_interval(secs => ${pauseSeconds})
    where id = ${id}::uuid and state = 'waiting'`;
}
