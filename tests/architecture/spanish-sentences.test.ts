import { readdirSync, readFileSync } from 'node:fs';
import { CLASSES, MANUAL_FIRST, PARTS, SERVICE_ITEMS, SYMPTOMS } from '@deckround/catalogue';
import { TITLES } from '@deckround/catalogue/spanish';
import { assumptionsOf } from '@deckround/learning';
import { compareGrades, sampleOf } from '@deckround/reliability';
import { describe, expect, it } from '@jest/globals';
import { inSpanish, SENTENCES } from '../../apps/web/src/words/sentences/in-spanish.js';

const ROOT = new URL('../../', import.meta.url);

function sourcesOf(...folders: string[]): string {
  return folders
    .flatMap((folder) =>
      readdirSync(new URL(folder, ROOT), { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
        .map((name) => readFileSync(new URL(`${folder}/${name}`, ROOT), 'utf8')),
    )
    .join('\n');
}

/** Sentences as they stand in the sources: what is filled in later is a slot called x. */
const written = (source: string) =>
  source
    .slice(1, -1)
    .replace(/\\(['"`])/g, '$1')
    .replace(/\$\{[^}]*\}/g, 'x');

const CATALOGUE_TEXTS = [
  MANUAL_FIRST,
  ...CLASSES.flatMap((each) => each.preparations.flatMap((one) => one.cautions)),
  ...SERVICE_ITEMS.flatMap((item) => [
    ...item.cautions,
    ...item.steps,
    ...item.torques.flatMap((torque) => [torque.what, torque.note]),
    ...item.consumables.map((one) => one.name),
  ]),
  ...PARTS.map((part) => part.description),
  ...SYMPTOMS.flatMap((symptom) => symptom.cautions),
];

describe('what the service says in whole sentences', () => {
  it('has its Spanish for all that the starter catalogue says', () => {
    expect(CATALOGUE_TEXTS.length).toBeGreaterThan(100);
    expect([...new Set(CATALOGUE_TEXTS)].filter((text) => inSpanish(text) === null)).toEqual([]);
    expect(Object.keys(TITLES).sort()).toEqual([...new Set(SERVICE_ITEMS.map((item) => item.code))].sort());
  });

  it('has its Spanish for every refusal that its code alone does not explain, and every faulty field', () => {
    const api = sourcesOf('apps/api/src');
    const refusals = [
      ...api.matchAll(
        /DomainError\(\s*'(?:not-found|conflict|invalid-input|document-incomplete)',\s*('[^'\n]*'|`[^`]*`)/g,
      ),
    ].map(([, text]) => written(text!));
    const fields = [
      ...sourcesOf('libs/contracts/src').matchAll(/(?:\.regex\([^\n]*?\/u?, |message: |\], )('[^'\n]+')\)?/g),
      ...sourcesOf('libs/contracts/src').matchAll(/\.refine\([^\n]*?, ('[^'\n]+')\)/g),
      ...api.matchAll(/\{ pointer: [^\n]*?, detail: ('[^'\n]+'|`[^`]+`) \}/g),
    ].map(([, text]) => written(text!));
    expect(refusals.length).toBeGreaterThan(70);
    expect(fields.length).toBeGreaterThan(30);
    expect([...new Set([...refusals, ...fields])].filter((text) => inSpanish(text) === null)).toEqual([]);
  });

  it('has its Spanish for what became of asking and telling other systems', () => {
    const source = sourcesOf('apps/worker/src/deliver', 'apps/worker/src/telematics', 'libs/telematics/src');
    const told = [
      ...source.matchAll(/(?:InvalidSnapshot|ForbiddenAddress|PageNotGiven|switchOff)\(\s*('[^'\n]+'|`[^`]+`)/g),
      ...source.matchAll(/^ {2}\[\/.*\/, ('[^'\n]+')\],$/gm),
    ].map(([, text]) => written(text!));
    expect(told.length).toBeGreaterThan(18);
    expect(told.filter((text) => inSpanish(text) === null)).toEqual([]);
  });

  it('has its Spanish for what lives, grades and machines are said to rest on', () => {
    const life = { fittingKnown: false, countsAsFailure: false } as Parameters<typeof assumptionsOf>[0][number];
    const lives = (grade: string, ...ages: number[]) =>
      ages.map((age) => ({ age, outcome: 'failed', grade, severity: 'normal' }) as const);
    const graded = [...lives('A', 300, 420, 500, 610, 700), ...lives('B', 90, 110, 150, 180, 240)];
    const texts = [
      ...assumptionsOf([life]),
      ...assumptionsOf([life, life]),
      ...sampleOf([
        { age: 0, outcome: 'running' },
        { age: Number.NaN, outcome: 'failed' },
      ]).leftOut,
      ...[graded, [...graded].reverse(), graded.slice(4)].flatMap((each) => {
        const { sentence, assumptions } = compareGrades(each, ['A', 'B']);
        return [sentence, ...assumptions];
      }),
      compareGrades(graded, ['B', 'A']).sentence,
      compareGrades([...lives('A', 300, 420, 500), ...lives('B', 290, 430, 510)], ['A', 'B']).sentence,
      'From 47 failures of its own.',
      'Only 3 failures of its own. Learned from 1 failure in 4 groups: shape about 2.10, scale about 900 h; in each group the pool counts like 2 failures.',
      "Only 0 failures of its own: assumed before, the catalogue's shape near 2.5 and the life that makes the shop's interval the best one, scale near 1200 h, worth one failure.",
      'It runs 250 h next year, assumed.',
    ];
    expect(texts.filter((text) => inSpanish(text) === null)).toEqual([]);
    expect(inSpanish('Only 1 failure of its own. No failure in the pool: the stated prior alone.')).toBe(
      'Solo 1 falla propia. Ninguna falla en el conjunto: solo lo supuesto de antemano.',
    );
  });

  it('keeps nothing that the service does not say any more', () => {
    const all = sourcesOf('libs', 'apps/api/src', 'apps/worker/src').replace(/\\(['"`])/g, '$1');
    // Figures and plurals are put together there; what has none stands as it is.
    const isSaid = (text: string) => all.includes(text) || CATALOGUE_TEXTS.includes(text);
    const gone = SENTENCES.filter(([english]) => !/[{}]|^1 /.test(english) && !isSaid(english));
    expect(gone).toEqual([]);
  });

  it('leaves as it stands what a shop has typed itself', () => {
    expect(inSpanish('Grease it the way Sue does.')).toBeNull();
    expect(inSpanish('Debris cup in place and clear. Then tell Sue.')).toBeNull();
  });
});
