import { type Pdf, pageNumbers, print } from '../pdf/print.js';
import type { Day, DayMachine, DayVisit } from './day-of-paper.js';
import type { PaperWords } from './paper-words.js';
import { blanks, framed, heading, heavyRule, line, needs, subheading, tickLine } from './sheet-parts.js';

/** One visit on paper: the gate, each machine with its hours, cautions and steps, and room for what was found. */
export function drawVisitSheet(day: Day, visit: DayVisit, address: string, words: PaperWords): Promise<Buffer> {
  const { shop, date, technician, manualFirst } = day;
  const { site } = visit;
  const title = `${words.visitSheet}: ${site.name}`;
  const paper = { title, author: shop.name, day: new Date(`${date}T00:00:00Z`), language: words.language };
  return print(paper, (pdf) => {
    const slot = words.slot(visit.startAt, visit.endAt, site.timeZone);
    const promise =
      visit.promisedFrom && visit.promisedTo
        ? `, ${words.promised(words.slot(visit.promisedFrom, visit.promisedTo, site.timeZone))}`
        : '';
    heading(pdf, {
      shop: shop.name,
      title: site.name,
      lines: [words.day(date), `${slot}${promise}`, technician.name],
      address,
      scan: words.scan,
    });
    framed(pdf, words.said(manualFirst));
    if (site.gateNotes) line(pdf, `${words.gate}: ${site.gateNotes}`);
    if (site.cautions) framed(pdf, site.cautions);
    for (const machine of visit.machines) machineOf(pdf, machine, site.timeZone, shop.units, words);
    heavyRule(pdf);
    needs(pdf, 150);
    blanks(pdf, [words.moreWork], 40);
    blanks(pdf, [''], 24);
    blanks(pdf, [words.began, words.ended]);
    blanks(pdf, [words.name, words.signature], 44);
    pageNumbers(pdf, (page, pages) => words.page(title, page, pages));
  });
}

function machineOf(pdf: Pdf, machine: DayMachine, timeZone: string, units: string, words: PaperWords): void {
  needs(pdf, 190);
  pdf.y += 4;
  heavyRule(pdf);
  const { code, maker, model, serial, lastReading } = machine;
  subheading(pdf, code, 17);
  const name = [maker, model, serial && words.serial(serial)].filter(Boolean).join(', ');
  const last = lastReading
    ? words.lastHours(lastReading.hours, localDay(lastReading.readAt, timeZone, words))
    : words.noReading;
  line(pdf, [name, last].filter(Boolean).join(' · '));
  if (machine.items.some((item) => item.isElsewhere)) framed(pdf, words.elsewhere);
  blanks(pdf, [words.hoursNow, words.found], 38);
  for (const { description, limitHours, countedFrom, limitOn } of machine.stopgaps) {
    const from = words.day(countedFrom);
    const until = limitOn && words.day(limitOn);
    const limit =
      limitHours && until
        ? words.holdsEither(limitHours, from, until)
        : limitHours
          ? words.holdsHours(limitHours, from)
          : until && words.holdsUntil(until);
    framed(pdf, words.stopgap([description, limit].filter(Boolean).join(', ')));
  }
  if (machine.notes) line(pdf, machine.notes);
  subheading(pdf, words.before);
  for (const caution of machine.cautions) tickLine(pdf, '', words.said(caution), { size: 11 });
  for (const item of machine.items) {
    needs(pdf, 60);
    pdf.y += 4;
    tickLine(pdf, words.said(item.title), `${item.minutes} min`, { size: 13 });
    for (const [index, step] of item.steps.entries()) line(pdf, `${index + 1}. ${words.said(step)}`, { indent: 25 });
    for (const { what, ftLb, nm, note } of item.torques) {
      const figures = [span(ftLb, 'ft-lb', words), span(nm, 'N·m', words)].filter((each) => each !== null);
      if (units === 'metric') figures.reverse();
      const told =
        figures.length > 0 ? [figures.join(' = '), words.said(note)] : [words.said(note) || words.torqueManual];
      line(pdf, `${words.said(what)}: ${told.filter(Boolean).join('; ')}`, {
        indent: 25,
        size: 13,
        bold: true,
      });
    }
    for (const { quantity, unit, name: part } of item.parts)
      tickLine(pdf, words.amount(quantity, unit), words.said(part), { size: 11, indent: 25 });
  }
}

function span(figures: readonly number[] | null, unit: string, words: PaperWords): string | null {
  if (figures === null) return null;
  const [low, high] = figures as [number, number];
  return low === high ? `${words.number(low)} ${unit}` : `${words.number(low)}–${words.number(high)} ${unit}`;
}

function localDay(instant: string, timeZone: string, words: PaperWords): string {
  return words.day(new Intl.DateTimeFormat('en-CA', { timeZone }).format(new Date(instant)));
}
