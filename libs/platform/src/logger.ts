import { pino } from 'pino';
import type { Config } from './config.js';

/** A line is an event name plus ids and numbers: no secrets, no personal data. */
export type Fields = Readonly<Record<string, string | number | boolean | null | undefined>>;

export interface Logger {
  debug(event: string, fields?: Fields): void;
  info(event: string, fields?: Fields): void;
  warn(event: string, fields?: Fields): void;
  error(event: string, fields?: Fields, error?: unknown): void;
}

/** JSON lines on standard error, so that standard output stays the program's own. */
export function createLogger(level: Config['LOG_LEVEL'], service: string): Logger {
  const sink = pino({ level, base: { service } }, pino.destination({ fd: 2, sync: true }));
  return {
    debug: (event, fields) => sink.debug(fields ?? {}, event),
    info: (event, fields) => sink.info(fields ?? {}, event),
    warn: (event, fields) => sink.warn(fields ?? {}, event),
    error: (event, fields, error) => sink.error({ ...fields, err: error }, event),
  };
}
