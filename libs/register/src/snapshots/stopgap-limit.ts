/** Until when a stopgap is good: the date told, or the early end of when its hours run out, whichever comes first. */
export function stopgapLimit(
  { limitOn, limitHours }: { readonly limitOn: string | null; readonly limitHours: number | null },
  dueP10: string | null,
): string | null {
  const byHours = limitHours === null ? null : dueP10;
  return limitOn === null || (byHours !== null && byHours < limitOn) ? byHours : limitOn;
}
