import { catalogueInSpanish } from '@deckround/catalogue';

/** Words on printed sheets. */
const EN = {
  set: (n: number): string => (n === 1 ? 'set' : 'sets'),
  pair: (n: number): string => (n === 1 ? 'pair' : 'pairs'),
  loadList: 'Load list',
  visitSheet: 'Visit sheet',
  leave: (from: string, to: string) => `Leave ${from}, back ${to}`,
  noRoute: 'Nothing is planned on this day.',
  nothingToLoad: 'Nothing has to be loaded.',
  missing: (n: string) => `${n} MISSING`,
  stops: 'Stops',
  machines: (codes: string) => `Machines: ${codes}`,
  promised: (slot: string) => `promised ${slot}`,
  gate: 'At the gate',
  serial: (serial: string) => `serial ${serial}`,
  lastHours: (hours: string, day: string) => `last ${hours} h on ${day}`,
  noReading: 'no reading yet',
  elsewhere: 'It stands at another site by now: ask the shop before you look for it.',
  hoursNow: 'Hours now',
  stopgap: (what: string) => `On a stopgap: ${what}`,
  holdsHours: (hours: string, day: string) => `holds for ${hours} h from ${day} on`,
  holdsUntil: (day: string) => `holds until ${day}`,
  holdsEither: (hours: string, day: string, until: string) =>
    `holds for ${hours} h from ${day} on, or until ${until}, whichever comes first`,
  before: 'Before the first step',
  torqueManual: 'the figure is in the machine’s manual',
  found: 'Found and measured',
  moreWork: 'Other work found, parts used',
  began: 'Began',
  ended: 'Ended',
  name: 'Name',
  signature: 'Signature',
  page: (what: string, page: number, pages: number) => `${what}, page ${page} of ${pages}`,
  scan: 'Scan to open',
};
type PaperTexts = typeof EN;

const ES: PaperTexts = {
  set: (n) => (n === 1 ? 'juego' : 'juegos'),
  pair: (n) => (n === 1 ? 'par' : 'pares'),
  loadList: 'Lista de carga',
  visitSheet: 'Hoja de visita',
  leave: (from, to) => `Salida ${from}, regreso ${to}`,
  noRoute: 'No hay nada planeado este día.',
  nothingToLoad: 'No hay nada que cargar.',
  missing: (n) => `FALTAN ${n}`,
  stops: 'Paradas',
  machines: (codes) => `Máquinas: ${codes}`,
  promised: (slot) => `prometida ${slot}`,
  gate: 'En la entrada',
  serial: (serial) => `serie ${serial}`,
  lastHours: (hours, day) => `última ${hours} h el ${day}`,
  noReading: 'sin lectura',
  elsewhere: 'Ahora está en otro lugar: pregunte al taller antes de buscarla.',
  hoursNow: 'Horas ahora',
  stopgap: (what) => `Con arreglo provisional: ${what}`,
  holdsHours: (hours, day) => `aguanta ${hours} h desde el ${day}`,
  holdsUntil: (day) => `aguanta hasta el ${day}`,
  holdsEither: (hours, day, until) => `aguanta ${hours} h desde el ${day}, o hasta el ${until}, lo que ocurra primero`,
  before: 'Antes del primer paso',
  torqueManual: 'la cifra está en el manual de la máquina',
  found: 'Hallado y medido',
  moreWork: 'Otro trabajo hallado, piezas usadas',
  began: 'Inicio',
  ended: 'Fin',
  name: 'Nombre',
  signature: 'Firma',
  page: (what, page, pages) => `${what}, página ${page} de ${pages}`,
  scan: 'Escanear para abrir',
};

export interface PaperWords extends PaperTexts {
  readonly language: 'en' | 'es';
  /** A local date, `YYYY-MM-DD`, with its weekday. */
  day(date: string): string;
  /** The clock of a zone. */
  time(instant: string, timeZone: string): string;
  slot(from: string, to: string, timeZone: string): string;
  number(value: number): string;
  /** So much of a part: `7 ×`, `2 sets`, `14 l`. */
  amount(quantity: number, unit: string): string;
  /** Titles, steps and cautions of the starter catalogue in the reader's language; a shop's own as it has them. */
  said(text: string): string;
}

export function paperWords(language: 'en' | 'es'): PaperWords {
  const locale = language === 'es' ? 'es-US' : 'en-US';
  const dayFormat = new Intl.DateTimeFormat(locale, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });
  const numberFormat = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });
  const time = (instant: string, timeZone: string) =>
    new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone }).format(
      new Date(instant),
    );
  const texts = language === 'es' ? ES : EN;
  const unitOf = (quantity: number, unit: string) =>
    unit === 'each' ? '×' : unit === 'set' || unit === 'pair' ? texts[unit](quantity) : unit;
  return {
    ...texts,
    language,
    day: (date) => dayFormat.format(new Date(`${date}T00:00:00Z`)),
    time,
    slot: (from, to, timeZone) => `${time(from, timeZone)}–${time(to, timeZone)}`,
    number: (value) => numberFormat.format(value),
    amount: (quantity, unit) => `${numberFormat.format(quantity)} ${unitOf(quantity, unit)}`,
    said: (text) => (language === 'es' ? (catalogueInSpanish(text) ?? text) : text),
  };
}
