/** Maker and model as they stand on the machine; empty when neither is on record. */
export function machineName({
  maker,
  model,
}: {
  readonly maker: string | null;
  readonly model: string | null;
}): string {
  return [maker, model].filter(Boolean).join(' ');
}
