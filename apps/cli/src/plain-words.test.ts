import { describe, expect, it } from '@jest/globals';
import { plainWords } from './plain-words.js';

const failure = (code: string, message: string) => Object.assign(new Error(message), { code });

describe('plainWords', () => {
  it.each([
    [
      'a server that is not running',
      failure('ECONNREFUSED', 'connect ECONNREFUSED 127.0.0.1:5432'),
      'start it or correct',
    ],
    [
      'several hosts that refuse',
      Object.assign(new AggregateError([], ''), { code: 'ECONNREFUSED' }),
      '(ECONNREFUSED)',
    ],
    ['a host that is unknown', failure('ENOTFOUND', 'getaddrinfo ENOTFOUND base'), 'correct the address'],
    ['a wrong password', failure('28P01', 'password authentication failed'), 'correct its user and password'],
    ['no such database', failure('3D000', 'database "x" does not exist'), 'create it, or correct the name'],
  ])('says what to do about %s', (_name, error, said) => {
    expect(plainWords(error)).toContain('The database named by DATABASE_URL');
    expect(plainWords(error)).toContain(said);
  });

  it('passes on what explains itself', () => {
    expect(plainWords(new Error('Port 4310 is taken.'))).toBe('Port 4310 is taken.');
    expect(plainWords('stopped')).toBe('stopped');
  });
});
