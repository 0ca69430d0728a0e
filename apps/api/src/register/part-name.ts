/** What a part is called on lists: its description, with its designation where that is not in it already. */
export function partName({
  description,
  designation,
}: {
  readonly description: string;
  readonly designation: string | null;
}): string {
  const isNamed = !designation || description.split(/[\s,]+/).includes(designation);
  return isNamed ? description : `${description} ${designation}`;
}
