import { createHmac } from 'node:crypto';

/** Headers of Standard Webhooks 1.0.0; one signature for each secret that is in use. */
export function signedHeaders(id: string, body: string, secrets: readonly string[], at: Date): Record<string, string> {
  const timestamp = String(Math.floor(at.getTime() / 1000));
  const signature = secrets.map((secret) => {
    const key = Buffer.from(secret.replace(/^whsec_/, ''), 'base64');
    return `v1,${createHmac('sha256', key).update(`${id}.${timestamp}.${body}`).digest('base64')}`;
  });
  return { 'webhook-id': id, 'webhook-timestamp': timestamp, 'webhook-signature': signature.join(' ') };
}
