import type { JobPayload } from '@deckround/jobs';
import { claimDeliveries, type DueDelivery, postponeDelivery, type Tx } from '@deckround/store';
import type { WorkerContext } from '../context.js';
import { GIVE_UP_MS, pauseSeconds } from './pauses.js';
import { type PostAnswer, post } from './post.js';
import { signedHeaders } from './sign.js';

const BATCH = 20;

/**
 * Delivers what is due at one endpoint. At least once: whatever was sent but not yet written down when the process is
 * killed falls due again, under the same webhook-id.
 */
export function deliverProcessor(context: WorkerContext) {
  const { store, config, clock, logger } = context;
  return async ({ shopId, runId: endpointId }: JobPayload<'deliver'>): Promise<void> => {
    for (;;) {
      const endpoint = await store.inShop(shopId, (tx) => tx.webhookEndpoint.findUnique({ where: { id: endpointId } }));
      if (endpoint?.state !== 'active') return;
      const lease = config.WEBHOOK_TIMEOUT_SECONDS + config.JOB_LEASE_SECONDS;
      const due = await store.inShop(shopId, (tx) => claimDeliveries(tx, endpointId, BATCH, lease));
      if (due.length === 0) return;
      const now = clock.now();
      const secrets = [endpoint.secret];
      if (endpoint.previousSecret !== null && endpoint.previousUntil! > now) secrets.push(endpoint.previousSecret);
      const answers = await Promise.all(
        due.map((each) =>
          post(endpoint.url, each.body, signedHeaders(`msg_${each.eventId}`, each.body, secrets, clock.now()), {
            timeoutSeconds: config.WEBHOOK_TIMEOUT_SECONDS,
            mayBePrivate: config.WEBHOOK_PRIVATE === 'yes',
          }),
        ),
      );
      await store.inShop(shopId, async (tx) => {
        for (const [index, each] of due.entries())
          await record(tx, each, answers[index]!, clock.now(), config.WEBHOOK_PAUSE_SECONDS);
        await judgeEndpoint(tx, endpoint, answers, clock.now());
      });
      const delivered = answers.filter(isSuccess).length;
      logger.info('webhook.sent', { endpointId, delivered, failed: answers.length - delivered });
    }
  };
}

/** 2xx and nothing else. */
function isSuccess({ status }: PostAnswer): boolean {
  return status !== null && status >= 200 && status < 300;
}

async function record(tx: Tx, due: DueDelivery, answer: PostAnswer, now: Date, firstPause: number): Promise<void> {
  const outcome = { lastStatus: answer.status, lastError: answer.error?.slice(0, 500) ?? null };
  if (isSuccess(answer)) {
    await tx.webhookDelivery.update({
      where: { id: due.id },
      data: { ...outcome, state: 'delivered', deliveredAt: now },
    });
    return;
  }
  const pause = Math.max(pauseSeconds(due.attempts, firstPause, Math.random()), answer.retryAfterSeconds ?? 0);
  await postponeDelivery(tx, due.id, { status: outcome.lastStatus, error: outcome.lastError, pauseSeconds: pause });
}

/** An endpoint that says 410, or has not succeeded for days, is switched off; what waits for it stays. */
async function judgeEndpoint(
  tx: Tx,
  endpoint: { id: string; failingSince: Date | null },
  answers: readonly PostAnswer[],
  now: Date,
): Promise<void> {
  const switchOff = (disabledReason: string) =>
    tx.webhookEndpoint.update({
      where: { id: endpoint.id },
      data: { state: 'disabled', disabledReason, version: { increment: 1 } },
    });
  if (answers.some((answer) => answer.status === 410)) {
    await switchOff('The receiver answered 410: it is gone.');
  } else if (answers.some(isSuccess)) {
    if (endpoint.failingSince)
      await tx.webhookEndpoint.update({ where: { id: endpoint.id }, data: { failingSince: null } });
  } else if (endpoint.failingSince === null) {
    await tx.webhookEndpoint.update({ where: { id: endpoint.id }, data: { failingSince: now } });
  } else if (now.getTime() - endpoint.failingSince.getTime() > GIVE_UP_MS) {
    await switchOff('Nothing could be delivered for five days.');
  }
}
