// How much memory and time a large snapshot takes: a document is made piece by piece, so that only the reader's own memory
// is measured. `npm run bench:telematics [-- megabytes]`
import { performance } from 'node:perf_hooks';
import { readSnapshot } from '@deckround/telematics';

const MEGABYTES = Number(process.argv[2] ?? 100);

const xmlMachine = (n) =>
  `<Equipment><EquipmentHeader><UnitInstallDateTime>2025-03-01T00:00:00Z</UnitInstallDateTime><OEMName>Maker</OEMName><Model>ZT-60</Model><EquipmentID>MOWER-${n}</EquipmentID><SerialNumber>SN${n}E45</SerialNumber><PIN>PIN${n}</PIN></EquipmentHeader><Location datetime="2026-04-07T11:58:00Z"><Latitude>30.2672</Latitude><Longitude>-97.7431</Longitude></Location><CumulativeOperatingHours datetime="2026-04-07T11:58:00Z"><Hour>${n % 5000}.35</Hour></CumulativeOperatingHours></Equipment>\n`;
const jsonMachine = (n) =>
  `${n === 0 ? '' : ','}{"EquipmentHeader":{"OEMName":"Maker","Model":"ZT-60","EquipmentID":"MOWER-${n}","SerialNumber":"SN${n}E45","PIN":"PIN${n}"},"Location":{"datetime":"2026-04-07T11:58:00Z","Latitude":30.2672,"Longitude":-97.7431},"CumulativeOperatingHours":{"datetime":"2026-04-07T11:58:00Z","Hour":${n % 5000}.35}}\n`;

const FORMS = {
  xml: { head: '<Fleet xmlns="http://standards.iso.org/iso/15143/-3">', machine: xmlMachine, foot: '</Fleet>' },
  json: { head: '{"Fleet":{"Equipment":[', machine: jsonMachine, foot: ']}}' },
};

async function* document({ head, machine, foot }, bytes) {
  yield Buffer.from(head);
  let sent = 0;
  for (let n = 0; sent < bytes; ) {
    let piece = '';
    while (piece.length < 65_536) piece += machine(n++);
    const chunk = Buffer.from(piece);
    sent += chunk.length;
    yield chunk;
  }
  yield Buffer.from(foot);
}

for (const [format, form] of Object.entries(FORMS)) {
  globalThis.gc?.();
  let units = 0;
  let peak = 0;
  const began = performance.now();
  for await (const item of readSnapshot(document(form, MEGABYTES * 1e6), format)) {
    if (item.kind === 'unit') units += 1;
    if (units % 1000 === 0) peak = Math.max(peak, process.memoryUsage().rss);
  }
  const seconds = (performance.now() - began) / 1000;
  process.stdout.write(
    `${format}: ${MEGABYTES} MB, ${units} machines, ${seconds.toFixed(1)} s, peak ${(peak / 1e6).toFixed(0)} MB of memory (whole process)\n`,
  );
}
