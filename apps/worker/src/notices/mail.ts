import { createTransport } from 'nodemailer';
import { whyUnreached } from '../deliver/why-unreached.js';
import type { ComposedNotice } from './compose-notice.js';

/** How one message fared: taken by the server, refused for good, or to be tried again. */
export type MailOutcome = { readonly kind: 'sent' } | { readonly kind: 'refused' | 'failed'; readonly error: string };

/** Seconds that the mail server has to answer. */
const TIMEOUT_SECONDS = 20;

export interface Mailer {
  send(messageId: string, notice: ComposedNotice): Promise<MailOutcome>;
  close(): void;
}

/** Sends by SMTP, over one connection for as long as it is open. */
export function openMailer(smtpUrl: string, from: string): Mailer {
  const transport = createTransport({
    url: smtpUrl,
    pool: true,
    maxConnections: 1,
    connectionTimeout: TIMEOUT_SECONDS * 1000,
    greetingTimeout: TIMEOUT_SECONDS * 1000,
    socketTimeout: TIMEOUT_SECONDS * 1000,
  });
  return {
    send: async (messageId, { fromName, to, subject, text, calendar }) => {
      try {
        await transport.sendMail({
          messageId: `<${messageId}@${from.split('@')[1]}>`,
          from: { name: fromName, address: from },
          ...{ to, subject, text },
          headers: { 'Auto-Submitted': 'auto-generated' }, // RFC 3834: nobody's absence notice answers it
          ...(calendar !== null && {
            attachments: [
              { filename: 'visit.ics', content: calendar, contentType: 'text/calendar; charset=utf-8; method=PUBLISH' },
            ],
          }),
        });
        return { kind: 'sent' };
      } catch (error) {
        const { responseCode, message } = error as Error & { responseCode?: number };
        // RFC 5321, 4.2.1: 5yz is final. A refused sign-in (535) is the shop's set-up and may be mended.
        const isFinal = responseCode !== undefined && responseCode >= 500 && responseCode !== 535;
        const reason = responseCode === undefined ? whyUnreached(error) : message; // the server's own words, where it spoke
        return { kind: isFinal ? 'refused' : 'failed', error: reason.slice(0, 500) };
      }
    },
    close: () => transport.close(),
  };
}
