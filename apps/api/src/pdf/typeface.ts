import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';

const locate = createRequire(import.meta.url).resolve;
const read = (file: string) => readFileSync(locate(`@expo-google-fonts/source-sans-3/${file}`));

/** Source Sans 3 (SIL Open Font License), whole: names in any Latin, Greek or Cyrillic spelling print. */
export const REGULAR = read('400Regular/SourceSans3_400Regular.ttf');
export const BOLD = read('700Bold/SourceSans3_700Bold.ttf');

const drawn = new Set((create(REGULAR) as Font).characterSet);

/** The text as the typeface can show it: a character that it lacks becomes a question mark, not another letter. */
export function printable(text: string): string {
  return Array.from(text, (each) => (each === '\n' || drawn.has(each.codePointAt(0)!) ? each : '?')).join('');
}
