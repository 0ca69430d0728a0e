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

  it('name tiles of the map by their places, or one archive', () => {
    for (const MAP_TILES of ['https://tiles.example/{z}/{x}/{y}.png', 'http://10.0.0.2/iowa.pmtiles'])
      expect(parseConfig({ MAP_TILES }).MAP_TILES).toBe(MAP_TILES);
    for (const MAP_TILES of ['https://tiles.example/{z}/{x}.png', 'file:///iowa.pmtiles', 'iowa.pmtiles'])
      expect(() => parseConfig({ MAP_TILES })).toThrow(/MAP_TILES/);
  });

  it('report every fault at once', () => {
    expect(() => parseConfig({ PORT: '99999', LOG_LEVEL: 'loud' })).toThrow(InvalidConfig);
    expect(() => parseConfig({ PORT: '99999', LOG_LEVEL: 'loud' })).toThrow(/PORT[\s\S]*LOG_LEVEL/);
  });
});
