import { isDoneAhead } from '../field-day/left-to-load.js';
import { MARGIN, type Pdf, pageNumbers, print } from '../pdf/print.js';
import type { Day, DayVisit } from './day-of-paper.js';
import type { PaperWords } from './paper-words.js';
import { heading, line, subheading, tickLine } from './sheet-parts.js';

/** What goes into the van, to be ticked off; one technician-day after the other, each on a page of its own. */
export function drawLoadLists(
  days: readonly Day[],
  addressOf: (day: Day) => string,
  words: PaperWords,
): Promise<Buffer> {
  const [first] = days;
  const title = words.loadList;
  const paper = {
    title,
    author: first!.shop.name,
    day: new Date(`${first!.date}T00:00:00Z`),
    language: words.language,
  };
  return print(paper, (pdf) => {
    for (const [index, day] of days.entries()) {
      if (index > 0) pdf.addPage();
      pdf.x = MARGIN;
      pdf.y = MARGIN;
      loadList(pdf, day, addressOf(day), words);
    }
    pageNumbers(pdf, (page, pages) => words.page(title, page, pages));
  });
}

/** Machines on which something is left to do. */
function namesOf(machines: DayVisit['machines']): string {
  const left = machines.filter(({ items }) => items.some((item) => !item.isSpared));
  return left.map(({ code }) => code).join(', ');
}

function loadList(pdf: Pdf, { shop, technician, date, route, visits }: Day, address: string, words: PaperWords): void {
  const span = route
    ? words.leave(words.time(route.leaveAt, shop.timeZone), words.time(route.returnAt, shop.timeZone))
    : words.noRoute;
  heading(pdf, {
    shop: shop.name,
    title: words.loadList,
    lines: [technician.name, words.day(date), span],
    address,
    scan: words.scan,
  });
  const load = route?.load ?? [];
  if (load.length === 0) line(pdf, words.nothingToLoad);
  for (const { quantity, unit, name, missing } of load)
    tickLine(pdf, words.amount(quantity, unit), words.said(name), {
      mark: missing > 0 ? words.missing(words.number(missing)) : '',
    });
  subheading(pdf, words.stops);
  for (const [index, { site, startAt, endAt, machines }] of visits.filter((visit) => !isDoneAhead(visit)).entries()) {
    line(pdf, `${index + 1}. ${words.slot(startAt, endAt, site.timeZone)}  ${site.name}`, { bold: true });
    line(pdf, words.machines(namesOf(machines)), { indent: 16, size: 10 });
  }
}
