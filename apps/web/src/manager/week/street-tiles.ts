import { addProtocol, type FilterSpecification, type Map as MapLibreMap } from 'maplibre-gl';
import type { Shop } from '../../data/types.js';

const SOURCE = 'streets';
/**
 * Streets and water by the names of the two widespread schemas of vector tiles. Both layers hold other geometries beside:
 * squares among the streets, brooks as lines in the water.
 *
 * @source docs.protomaps.com/basemaps/layers, version 4: `roads`, `water`; openmaptiles.org/schema: `transportation`, `water`
 */
const ROADS = ['roads', 'transportation'];
const WATER = ['water'];

/** Puts the server's tiles under the outlines: pictures as they are, of vectors the streets and the water. */
export async function addStreets(
  map: MapLibreMap,
  { address }: NonNullable<Shop['mapTiles']>,
  colour: (name: string) => string,
): Promise<void> {
  if (!address.endsWith('.pmtiles')) {
    map.addSource(SOURCE, { type: 'raster', tiles: [address], tileSize: 256 });
    addPictures(map);
    return;
  }
  const { PMTiles, Protocol, TileType } = await import('pmtiles');
  const archive = new PMTiles(address);
  const protocol = new Protocol();
  protocol.add(archive);
  addProtocol('pmtiles', protocol.tile);
  const { tileType } = await archive.getHeader();
  if (tileType !== TileType.Mvt) {
    map.addSource(SOURCE, { type: 'raster', url: `pmtiles://${address}`, tileSize: 256 });
    addPictures(map);
    return;
  }
  map.addSource(SOURCE, { type: 'vector', url: `pmtiles://${address}` });
  const { vector_layers: layers = [] } = (await archive.getMetadata()) as { vector_layers?: { id: string }[] };
  for (const { id } of layers) {
    const layer = { id: `streets-${id}`, source: SOURCE, 'source-layer': id };
    if (WATER.includes(id))
      map.addLayer(
        { ...layer, type: 'fill', filter: only('Polygon'), paint: { 'fill-color': colour('--rule') } },
        'county',
      );
    if (ROADS.includes(id))
      map.addLayer(
        {
          ...layer,
          type: 'line',
          filter: only('LineString'),
          paint: { 'line-color': colour('--edge'), 'line-width': 1 },
        },
        'county',
      );
  }
}

const only = (geometry: 'Polygon' | 'LineString'): FilterSpecification => ['==', '$type', geometry];

function addPictures(map: MapLibreMap): void {
  map.addLayer({ id: SOURCE, type: 'raster', source: SOURCE, paint: { 'raster-saturation': -0.6 } }, 'county');
}
