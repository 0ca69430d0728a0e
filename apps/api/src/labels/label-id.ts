import { randomBytes } from 'node:crypto';

/** Crockford's alphabet: no letter that is taken for a digit. */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LENGTH = 26;

/** 130 random bits: nobody finds a label by trying. */
export function newLabelId(): string {
  return Array.from(randomBytes(LENGTH), (byte) => ALPHABET[byte % 32]).join('');
}

/** As it is kept; addresses are typed and scanned in either case. */
export const keptId = (id: string): string => id.toUpperCase();
