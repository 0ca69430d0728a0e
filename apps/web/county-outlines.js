import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { mesh } from 'topojson-client';

const SOURCE = createRequire(import.meta.url).resolve('us-atlas/counties-10m.json');

/**
 * `virtual:county-outlines`: borders of the counties and states of the United States as GeoJSON lines, converted at
 * build time from us-atlas (U.S. Census Bureau cartographic boundary files, public domain; package ISC).
 */
export function countyOutlines() {
  const name = 'virtual:county-outlines';
  return {
    name: 'county-outlines',
    resolveId: (id) => (id === name ? `\0${name}` : null),
    load(id) {
      if (id !== `\0${name}`) return null;
      const topology = JSON.parse(readFileSync(SOURCE, 'utf8'));
      const { counties, states } = topology.objects;
      const lines = {
        county: mesh(topology, counties, (a, b) => a !== b && stateOf(a) === stateOf(b)),
        state: mesh(topology, states),
      };
      const features = Object.entries(lines).map(([kind, line]) => ({
        type: 'Feature',
        properties: { kind },
        geometry: { ...line, coordinates: line.coordinates.map((each) => each.map((at) => at.map(rounded))) },
      }));
      const file = this.emitFile({
        type: 'asset',
        name: 'counties.json',
        source: JSON.stringify({ type: 'FeatureCollection', features }),
      });
      return `export default import.meta.ROLLUP_FILE_URL_${file};`;
    },
  };
}

const stateOf = (county) => county.id.slice(0, 2);
/** A ten-thousandth of a degree, about 11 m: finer than the source's own 1:10 million. */
const rounded = (degrees) => Math.round(degrees * 1e4) / 1e4;
