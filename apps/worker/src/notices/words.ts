import { catalogueInSpanish } from '@deckround/catalogue';
import type { NoticeType } from '@deckround/store';

export type NoticeLanguage = 'en' | 'es';

/** What a notice says, its dates and times already written in the site's zone and the reader's language. */
export interface NoticeFacts {
  readonly shop: string;
  readonly site: string;
  readonly day: string;
  /** The promised span; null = none was promised. */
  readonly promised: { readonly from: string; readonly to: string } | null;
  /** The planned start. */
  readonly time: string;
  /** Of a cancelled visit: when the visits come that do its work instead. */
  readonly doneWith: readonly Pick<NoticeFacts, 'day' | 'promised' | 'time'>[];
  readonly work: readonly string[];
  readonly left: readonly string[];
  /** Of a stopgap. */
  readonly machine: string;
  readonly repair: string;
  /** The day that the lasting repair is planned for; null = none yet. */
  readonly repairDay: string | null;
}

export interface NoticeWords {
  readonly locale: string;
  /** Work by its title: the starter catalogue's in the reader's language, a shop's own as it stands. */
  readonly work: (title: string) => string;
  readonly subject: Readonly<Record<NoticeType, (facts: NoticeFacts) => string>>;
  /** Paragraphs and lists, top to bottom. */
  readonly body: Readonly<Record<NoticeType, (facts: NoticeFacts) => readonly string[]>>;
  readonly footer: (facts: NoticeFacts) => string;
}

const list = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [[title, ...lines.map((line) => `- ${line}`)].join('\n')];

const en: NoticeWords = {
  locale: 'en-US',
  work: (title) => title,
  subject: {
    'visit.promised': ({ shop, site, day }) => `${shop}: visit to ${site} on ${day}`,
    'visit.moved': ({ shop, site, day }) => `${shop}: visit to ${site} moved to ${day}`,
    'visit.cancelled': ({ shop, site, day, doneWith: [other] }) =>
      other
        ? `${shop}: visit to ${site} on ${day} joins that on ${other.day}`
        : `${shop}: visit to ${site} on ${day} cancelled`,
    'visit.done': ({ shop, site, day }) => `${shop}: visit to ${site} on ${day} is done`,
    'stopgap.limit-near': ({ machine, day }) => `Temporary repair on ${machine} is good until ${day}`,
  },
  body: {
    'visit.promised': ({ shop, site, day, promised, time, work }) => [
      promised
        ? `${shop} comes to ${site} on ${day}, between ${promised.from} and ${promised.to}.`
        : `${shop} comes to ${site} on ${day} at about ${time}.`,
      ...list('Planned work:', work),
    ],
    'visit.moved': ({ shop, site, day, promised, time, work }) => [
      promised
        ? `The visit of ${shop} to ${site} has been moved: it is on ${day} now, between ${promised.from} and ${promised.to}.`
        : `The visit of ${shop} to ${site} has been moved: it is planned for ${day} now, at about ${time}. This time is not promised yet.`,
      ...list('Planned work:', work),
    ],
    'visit.cancelled': ({ shop, site, day, doneWith }) =>
      doneWith.length === 0
        ? [`The visit of ${shop} to ${site} on ${day} will not take place. ${shop} plans the work anew.`]
        : [
            `The visit of ${shop} to ${site} on ${day} will not take place: its work is done with another visit.`,
            ...doneWith.map((other) =>
              other.promised
                ? `That visit is on ${other.day}, between ${other.promised.from} and ${other.promised.to}.`
                : `That visit is planned for ${other.day}, at about ${other.time}. This time is not promised yet.`,
            ),
          ],
    'visit.done': ({ shop, site, day, work, left }) => [
      `The visit of ${shop} to ${site} on ${day} is done.`,
      ...list('Done:', work),
      ...list('Left for later:', left),
    ],
    'stopgap.limit-near': ({ shop, site, machine, repair, day, repairDay }) => [
      `The temporary repair on ${machine} at ${site} (${repair}) is good until about ${day}. Do not run the machine beyond that before the lasting repair is done.`,
      repairDay === null
        ? `The lasting repair is not arranged yet: ${shop} plans it.`
        : `The lasting repair is planned for ${repairDay}.`,
    ],
  },
  footer: ({ shop, site }) => `You read this as a contact of ${site}. Tell ${shop} if you no longer want it.`,
};

const es: NoticeWords = {
  locale: 'es-US',
  work: (title) => catalogueInSpanish(title) ?? title,
  subject: {
    'visit.promised': ({ shop, site, day }) => `${shop}: visita a ${site} el ${day}`,
    'visit.moved': ({ shop, site, day }) => `${shop}: la visita a ${site} pasa al ${day}`,
    'visit.cancelled': ({ shop, site, day, doneWith: [other] }) =>
      other
        ? `${shop}: la visita a ${site} del ${day} se une a la del ${other.day}`
        : `${shop}: cancelada la visita a ${site} del ${day}`,
    'visit.done': ({ shop, site, day }) => `${shop}: terminada la visita a ${site} del ${day}`,
    'stopgap.limit-near': ({ machine, day }) => `El arreglo provisional de ${machine} aguanta hasta el ${day}`,
  },
  body: {
    'visit.promised': ({ shop, site, day, promised, time, work }) => [
      promised
        ? `${shop} va a ${site} el ${day}, entre las ${promised.from} y las ${promised.to}.`
        : `${shop} va a ${site} el ${day}, hacia las ${time}.`,
      ...list('Trabajo previsto:', work),
    ],
    'visit.moved': ({ shop, site, day, promised, time, work }) => [
      promised
        ? `La visita de ${shop} a ${site} ha cambiado: ahora es el ${day}, entre las ${promised.from} y las ${promised.to}.`
        : `La visita de ${shop} a ${site} ha cambiado: ahora está prevista para el ${day}, hacia las ${time}. Esta hora aún no está prometida.`,
      ...list('Trabajo previsto:', work),
    ],
    'visit.cancelled': ({ shop, site, day, doneWith }) =>
      doneWith.length === 0
        ? [`La visita de ${shop} a ${site} del ${day} no tendrá lugar. ${shop} vuelve a planear el trabajo.`]
        : [
            `La visita de ${shop} a ${site} del ${day} no tendrá lugar: su trabajo se hace con otra visita.`,
            ...doneWith.map((other) =>
              other.promised
                ? `Esa visita es el ${other.day}, entre las ${other.promised.from} y las ${other.promised.to}.`
                : `Esa visita está prevista para el ${other.day}, hacia las ${other.time}. Esta hora aún no está prometida.`,
            ),
          ],
    'visit.done': ({ shop, site, day, work, left }) => [
      `La visita de ${shop} a ${site} del ${day} está terminada.`,
      ...list('Hecho:', work),
      ...list('Queda para más adelante:', left),
    ],
    'stopgap.limit-near': ({ shop, site, machine, repair, day, repairDay }) => [
      `El arreglo provisional de ${machine} en ${site} (${repair}) aguanta hasta el ${day} aproximadamente. No use la máquina después de esa fecha antes de la reparación definitiva.`,
      repairDay === null
        ? `La reparación definitiva aún no tiene fecha: ${shop} la planea.`
        : `La reparación definitiva está prevista para el ${repairDay}.`,
    ],
  },
  footer: ({ shop, site }) => `Recibe este mensaje como contacto de ${site}. Avise a ${shop} si ya no lo quiere.`,
};

export const NOTICE_WORDS: Readonly<Record<NoticeLanguage, NoticeWords>> = { en, es };
