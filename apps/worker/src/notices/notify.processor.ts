import type { JobPayload } from '@deckround/jobs';
import { claimNotices, postponeNotice, type Tx } from '@deckround/store';
import type { WorkerContext } from '../context.js';
import { pauseSeconds } from '../deliver/pauses.js';
import { composeNotice } from './compose-notice.js';
import { type MailOutcome, openMailer } from './mail.js';

const BATCH = 20;
/** News older than this is not sent any more. */
const GIVE_UP_MS = 2 * 86_400_000;

/**
 * Sends the due notices of one shop, one after the other. At least once: what was sent but not yet written down when the
 * process is killed is sent again, under the same Message-ID.
 */
export function notifyProcessor({ store, config, clock, logger }: WorkerContext) {
  return async ({ shopId }: JobPayload<'notify'>): Promise<void> => {
    if (config.SMTP_URL === undefined) return;
    const mailer = openMailer(config.SMTP_URL, config.MAIL_FROM);
    try {
      for (;;) {
        const ids = await store.inShop(shopId, (tx) => claimNotices(tx, BATCH, BATCH * config.JOB_LEASE_SECONDS));
        if (ids.length === 0) return;
        for (const id of ids) {
          const { row, notice } = await store.inShop(shopId, async (tx) => ({
            row: await tx.notice.findUnique({ where: { id }, include: { event: true } }),
            notice: await composeNotice(tx, id),
          }));
          if (row?.state !== 'waiting') continue;
          const isOld = clock.now().getTime() - row.event.occurredAt.getTime() > GIVE_UP_MS;
          if (notice === null || isOld) {
            const lastError = row.lastError ?? 'It could not be sent within two days.';
            const end = notice === null ? { state: 'superseded' } : { state: 'given-up', lastError };
            await store.inShop(shopId, (tx) => tx.notice.updateMany({ where: { id, state: 'waiting' }, data: end }));
            continue;
          }
          const outcome = await mailer.send(id, notice);
          await store.inShop(shopId, (tx) => writeDown(tx, row, outcome, clock.now(), config.MAIL_PAUSE_SECONDS));
          logger.info('notice.tried', { noticeId: id, outcome: outcome.kind });
        }
      }
    } finally {
      mailer.close();
    }
  };
}

async function writeDown(
  tx: Tx,
  { id, attempts }: { id: string; attempts: number },
  outcome: MailOutcome,
  now: Date,
  firstPause: number,
): Promise<void> {
  const waiting = { id, state: 'waiting' };
  if (outcome.kind === 'sent')
    await tx.notice.updateMany({ where: waiting, data: { state: 'sent', sentAt: now, lastError: null } });
  else if (outcome.kind === 'refused')
    await tx.notice.updateMany({ where: waiting, data: { state: 'refused', lastError: outcome.error } });
  else await postponeNotice(tx, id, outcome.error, pauseSeconds(attempts, firstPause, Math.random()));
}
