import { describe, expect, it } from '@jest/globals';
import { InvalidConfig, parseConfig } from './config.js';

describe('settings', () => {
  it('have defaults that run on one machine', () => {
    expect(parseConfig({})).toMatchObject({ DECKROUND_DATA: '.deckround', PORT: 4310, LOG_LEVEL: 'info' });
  });

  it('treat an empty value as absent', () => {
    expect(parseConfig({ DATABASE_URL: '', PORT: '' })).toMatchObject({ PORT: 4310 });
    expect(parseConfig({ DATABASE_URL: '' }).DATABASE_URL).toBeUndefined();
  });

  it('report every fault at once', () => {
    expect(() => parseConfig({ PORT: '99999', LOG_LEVEL: 'loud' })).toThrow(InvalidConfig);
    expect(() => parseConfig({ PORT: '99999', LOG_LEVEL: 'loud' })).toThrow(/PORT[\s\S]*LOG_LEVEL/);
  });
});
