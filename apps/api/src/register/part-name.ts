/** What a part is called on lists and documents: its description, with its designation where that is not in it already. */
export function partName({
  description,
  designation,
}: {
  readonly description: string;
  readonly designation: string | null;
}): string {
  const isNamed = !designation || inWords(description).includes(inWords(designation));
  return isNamed ? description : `${description} ${designation}`;
}

/** Whole words only: a hose of 3/8 in is none of 8 in. */
const inWords = (text: string) => ` ${text.split(/[\s,]+/).join(' ')} `;
