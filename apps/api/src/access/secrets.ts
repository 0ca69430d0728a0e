import { createHash, randomBytes } from 'node:crypto';
import { hash, verify } from '@node-rs/argon2';

// OWASP ASVS 5.0.0, appendix C: argon2id with t = 2, m = 19,456 KiB, p = 1 (the library's default kind is argon2id).
const ARGON2 = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

export function hashPassword(password: string): Promise<string> {
  return hash(password, ARGON2);
}

export function checkPassword(passwordHash: string, password: string): Promise<boolean> {
  return verify(passwordHash, password);
}

/** 256 random bits need no slow hash: SHA-256 is what the database keeps. */
export function newSecret(prefix: string): { secret: string; hash: string } {
  const secret = `${prefix}_${randomBytes(32).toString('base64url')}`;
  return { secret, hash: hashSecret(secret) };
}

export function hashSecret(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}

export const SESSION_PREFIX = 'drs';
export const KEY_PREFIX = 'drk';
export const CALENDAR_PREFIX = 'drc';
