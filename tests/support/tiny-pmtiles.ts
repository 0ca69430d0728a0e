import { TileType, zxyToTileId } from 'pmtiles';

/**
 * A vector tile with level lines all over it, in one layer.
 *
 * @source Vector Tile Specification 2.1, chapter 4: layers, features, and geometry as commands
 */
function ruledTile(layer: string, lines = 64): Buffer {
  const extent = 4096;
  const geometry = [];
  // The pen stands where the line before has ended: to its right end, one line lower.
  for (let line = 0; line < lines; line += 1) {
    const down = line === 0 ? extent / lines / 2 : extent / lines;
    geometry.push(
      command(1, 1),
      zigzag(line === 0 ? 0 : -extent),
      zigzag(down),
      command(2, 1),
      zigzag(extent),
      zigzag(0),
    );
  }
  const feature = Buffer.concat([field(3, 2), bytes(4, Buffer.concat(geometry.map(varint)))]);
  return bytes(3, Buffer.concat([bytes(1, Buffer.from(layer)), bytes(2, feature), field(5, extent), field(15, 2)]));
}

/**
 * An archive of one tile that stands in many places: a square of the map at one distance.
 *
 * @source PMTiles Version 3 Specification, chapters 3 (header), 4 (directories) and 5 (metadata); nothing is compressed
 */
export function tinyPmtiles(
  layer: string,
  { zoom, x, y }: { readonly zoom: number; readonly x: readonly number[]; readonly y: readonly number[] },
): Buffer {
  const tile = ruledTile(layer);
  const ids = x.flatMap((column) => y.map((row) => zxyToTileId(zoom, column, row))).sort((a, b) => a - b);
  const directory = Buffer.concat(
    [
      ids.length,
      ...ids.map((id, at) => id - (ids[at - 1] ?? 0)),
      ...ids.map(() => 1), // each stands for itself
      ...ids.map(() => tile.length),
      ...ids.map(() => 1), // the offset plus one: all at the beginning
    ].map(varint),
  );
  const metadata = Buffer.from(JSON.stringify({ vector_layers: [{ id: layer, fields: {} }] }));
  const header = Buffer.alloc(127);
  header.write('PMTiles', 0, 'ascii');
  header.writeUInt8(3, 7);
  const places = [header.length, directory.length, header.length + directory.length, metadata.length];
  const tilesFrom = header.length + directory.length + metadata.length;
  for (const [at, value] of [...places, tilesFrom, 0, tilesFrom, tile.length, ids.length, ids.length, 1].entries())
    header.writeBigUInt64LE(BigInt(value), 8 + 8 * at);
  // Clustered or not, compression of directories and tiles (1 = none), kind of tiles, distances.
  for (const [at, value] of [0, 1, 1, TileType.Mvt, zoom, zoom].entries()) header.writeUInt8(value, 96 + at);
  for (const [at, degrees] of [-180, -85, 180, 85].entries()) header.writeInt32LE(degrees * 1e7, 102 + 4 * at);
  header.writeUInt8(zoom, 118);
  return Buffer.concat([header, directory, metadata, tile]);
}

function varint(value: number): Buffer {
  const found = [];
  let rest = value;
  while (rest > 0x7f) {
    found.push((rest % 0x80) | 0x80);
    rest = Math.floor(rest / 0x80);
  }
  return Buffer.from([...found, rest]);
}

const command = (id: number, count: number) => (count << 3) | id;
const zigzag = (value: number) => (value << 1) ^ (value >> 31);
const field = (number: number, value: number) => Buffer.concat([varint(number << 3), varint(value)]);
const bytes = (number: number, value: Buffer) =>
  Buffer.concat([varint((number << 3) | 2), varint(value.length), value]);
