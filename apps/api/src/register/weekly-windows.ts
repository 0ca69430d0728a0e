import { DomainError } from '@deckround/platform';
import { clockOf, minuteOf } from '@deckround/register';

export interface WireWindow {
  readonly weekday: number;
  readonly from: string;
  readonly to: string;
}

/** @throws DomainError invalid-input when a window ends before it begins, two overlap or a day has too many */
export function checkWindows(
  windows: readonly WireWindow[],
  pointer: string,
  mostPerDay = Infinity,
): { weekday: number; startMinute: number; endMinute: number }[] {
  const spans = windows.map((each) => ({
    weekday: each.weekday,
    startMinute: minuteOf(each.from),
    endMinute: minuteOf(each.to),
  }));
  spans.forEach((span, index) => {
    const refuse = (detail: string) => {
      throw new DomainError('invalid-input', 'The hours cannot be used.', [{ pointer: `${pointer}/${index}`, detail }]);
    };
    if (span.endMinute > 1440) refuse('the day ends at 24:00');
    if (span.startMinute >= span.endMinute) refuse('it ends before it begins');
    const overlaps = spans.some(
      (other, place) =>
        place < index &&
        other.weekday === span.weekday &&
        other.startMinute < span.endMinute &&
        span.startMinute < other.endMinute,
    );
    if (overlaps) refuse('it overlaps another of the same weekday');
    const onDay = spans.filter((other, place) => place <= index && other.weekday === span.weekday);
    if (onDay.length > mostPerDay) refuse(`at most ${mostPerDay} of the same weekday`);
  });
  return spans;
}

export function toWireWindow(weekday: number, startMinute: number, endMinute: number): WireWindow {
  return { weekday, from: clockOf(startMinute), to: clockOf(endMinute) };
}
