import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useRef, useState } from 'react';
import { api } from '../../data/api.js';
import type { MovePrices, Visit, VisitMoved } from '../../data/types.js';
import { scrollAtEdges } from './edge-scroll.js';
import {
  type ArrowKey,
  type ClosedDay,
  closedDay,
  type MovePlace,
  nearestPlace,
  placeAfterKey,
} from './move-choice.js';

/** A press turns into a drag when the pointer has gone this far. A finger that goes so far at once scrolls. */
const DRAG_PIXELS = 5;
/** A finger lifts a visit when it has rested on it so long. */
const HOLD_MS = 350;
/** What is clicked so soon after a finger has let go was not meant. */
const AFTER_TOUCH_MS = 300;

export interface Move {
  readonly visit: Visit;
  readonly by: 'pointer' | 'touch' | 'keys';
  readonly prices: MovePrices | null;
  readonly place: MovePlace | null;
  /** The day under the pointer cannot take the visit. */
  readonly closed: ClosedDay | null;
}

interface Press {
  readonly visit: Visit;
  readonly x: number;
  readonly y: number;
  /** From the left edge of the visit to where it was gripped, pixels. */
  readonly grip: number;
  /** Of a finger alone: lifts the visit when it has rested long enough. */
  readonly hold?: ReturnType<typeof setTimeout>;
}

interface Undo {
  readonly visit: Visit;
  readonly to: { readonly technicianId: string; readonly date: string; readonly order: number };
}

interface Options {
  /** The plan that the week stands by: another one leaves nothing to take back. */
  readonly plan: string | null;
  /** Technician-days in the order in which they are shown. */
  readonly days: readonly { readonly technicianId: string; readonly date: string }[];
  readonly minuteOf: (date: string, instant: string) => number;
  readonly axis: { readonly from: number; readonly to: number };
  /** The slip that follows the pointer: moved directly, as it has to keep up with the hand. */
  readonly slip: React.RefObject<HTMLElement | null>;
}

/** Taking a visit to another place of the week, by pointer or keys, with the price of every place known beforehand. */
export function useMove({ plan, days, minuteOf, axis, slip }: Options) {
  const client = useQueryClient();
  const [move, setMove] = useState<Move | null>(null);
  const [undos, setUndos] = useState<readonly Undo[]>([]);
  const current = useRef<Move | null>(null);
  current.current = move;
  const pressed = useRef<Press | null>(null);
  const dragged = useRef(false);
  const pointer = useRef({ x: 0, y: 0 });

  const apply = useMutation({
    mutationFn: async ({
      visit,
      to,
      stamp,
      pinned,
    }: {
      visit: Visit;
      to: Undo['to'];
      stamp?: string;
      pinned: boolean;
    }) =>
      api.post<VisitMoved>(`/v1/visits/${visit.id}/move`, { ...to, pinned, ...(stamp === undefined ? {} : { stamp }) }),
    onSettled: () => client.invalidateQueries(),
  });
  const ask = useMutation({
    mutationFn: (visit: Visit) => api.get<MovePrices>(`/v1/visits/${visit.id}/move-prices`),
    onSuccess: (prices, visit) =>
      setMove((before) =>
        before?.visit.id === visit.id
          ? {
              ...before,
              prices,
              place: before.by === 'keys' ? whereItBegins(prices) : before.place,
            }
          : before,
      ),
    onError: () => setMove(null),
  });

  const [forgetApplied, forgetAsked] = [apply.reset, ask.reset];
  useEffect(() => {
    setUndos([]);
    forgetApplied();
    forgetAsked();
  }, [plan, forgetApplied, forgetAsked]);

  const start = useCallback(
    (visit: Visit, by: Move['by']) => {
      setMove({ visit, by, prices: null, place: null, closed: null });
      ask.mutate(visit);
    },
    [ask.mutate],
  );
  const letGo = useCallback(() => {
    clearTimeout(pressed.current?.hold);
    pressed.current = null;
  }, []);
  const cancel = useCallback(() => {
    letGo();
    setMove(null);
  }, [letGo]);
  const finish = useCallback(() => {
    const made = current.current;
    setMove(null);
    if (!made?.place || !made.prices || made.place.isWhereItStands) return;
    const from = made.prices.places.find((place) => place.isWhereItStands);
    const { technicianId, date, order } = made.place;
    apply.mutate(
      { visit: made.visit, to: { technicianId, date, order }, stamp: made.prices.stamp, pinned: true },
      {
        onSuccess: () => {
          if (from)
            setUndos((before) => [
              ...before,
              { visit: made.visit, to: { technicianId: from.technicianId, date: from.date, order: from.order } },
            ]);
        },
      },
    );
  }, [apply.mutate]);

  const latest = useRef({ days, minuteOf, axis });
  latest.current = { days, minuteOf, axis };

  const step = useCallback((key: ArrowKey) => {
    const now = current.current;
    if (!now?.prices || !now.place) return;
    const { days: shown, minuteOf: minutes } = latest.current;
    const place = placeAfterKey(now.prices, shown, now.place, key, (instant) => minutes(instant.slice(0, 10), instant));
    setMove({ ...now, place });
  }, []);

  const lookUnder = useCallback((prices: MovePrices) => {
    const { x, y } = pointer.current;
    const track = document.elementFromPoint(x, y)?.closest<HTMLElement>('[data-technician]');
    const left = x - (pressed.current?.grip ?? 0);
    const under = track ? underPointer(prices, track, left, latest.current) : { place: null, closed: null };
    setMove((before) =>
      before === null || (before.place === under.place && before.closed === under.closed)
        ? before
        : { ...before, ...under },
    );
  }, []);
  // The prices may come while the hand holds still.
  const prices = move === null || move.by === 'keys' ? null : move.prices;
  useEffect(() => {
    if (!prices || !pressed.current) return;
    lookUnder(prices);
    return scrollAtEdges(
      () => pointer.current.y,
      () => lookUnder(prices),
    );
  }, [prices, lookUnder]);

  useEffect(() => {
    const onMove = (event: PointerEvent) => {
      const press = pressed.current;
      if (press === null) return;
      if (!dragged.current) {
        if (Math.hypot(event.clientX - press.x, event.clientY - press.y) < DRAG_PIXELS) return;
        if (press.hold !== undefined) return letGo();
        dragged.current = true;
        start(press.visit, 'pointer');
      }
      pointer.current = { x: event.clientX, y: event.clientY };
      // Looked at before the slip is moved: afterwards the page would have to be laid out first.
      if (current.current?.prices) lookUnder(current.current.prices);
      if (slip.current && press.hold === undefined)
        slip.current.style.transform = `translate(${event.clientX + 14}px, ${event.clientY + 18}px)`;
    };
    const onUp = () => {
      const wasDrag = dragged.current && pressed.current !== null;
      const wasTouch = pressed.current?.hold !== undefined;
      letGo();
      if (wasDrag) finish();
      // The click that follows a drag is no choice of the visit.
      setTimeout(
        () => {
          dragged.current = false;
        },
        wasTouch ? AFTER_TOUCH_MS : 0,
      );
    };
    // While a finger carries a visit the page does not scroll under it, nor does a menu open.
    const onTouch = (event: Event) => {
      if (dragged.current && pressed.current?.hold !== undefined && event.cancelable) event.preventDefault();
    };
    const onKey = (event: KeyboardEvent) => {
      const now = current.current;
      if (now === null) return;
      if (event.key === 'Escape') cancel();
      else if (now.by === 'keys' && event.key === 'Enter') finish();
      else if (now.by === 'keys' && /^Arrow(Left|Right|Up|Down)$/.test(event.key)) step(event.key as ArrowKey);
      else return;
      event.preventDefault();
      event.stopPropagation();
    };
    addEventListener('pointermove', onMove);
    addEventListener('pointerup', onUp);
    addEventListener('pointercancel', cancel);
    addEventListener('keydown', onKey, true);
    addEventListener('touchmove', onTouch, { passive: false });
    addEventListener('contextmenu', onTouch);
    return () => {
      removeEventListener('touchmove', onTouch);
      removeEventListener('contextmenu', onTouch);
      removeEventListener('pointermove', onMove);
      removeEventListener('pointerup', onUp);
      removeEventListener('pointercancel', cancel);
      removeEventListener('keydown', onKey, true);
    };
  }, [start, step, finish, cancel, letGo, lookUnder, slip]);

  return {
    move,
    error: ask.error ?? apply.error,
    isApplying: apply.isPending,
    done: apply.data ?? null,
    lastUndo: undos.at(-1) ?? null,
    start,
    step,
    finish,
    cancel,
    press: useCallback(
      (visit: Visit, event: React.PointerEvent<HTMLElement>) => {
        if (event.button !== 0 || visit.state === 'done') return;
        letGo();
        const { left } = event.currentTarget.getBoundingClientRect();
        const { clientX: x, clientY: y } = event;
        dragged.current = false;
        pointer.current = { x, y };
        const lift = () => {
          dragged.current = true;
          start(visit, 'touch');
        };
        const hold = event.pointerType === 'touch' ? setTimeout(lift, HOLD_MS) : undefined;
        pressed.current = { visit, x, y, grip: x - left, ...(hold === undefined ? {} : { hold }) };
      },
      [start, letGo],
    ),
    wasDragged: useCallback(() => dragged.current, []),
    undo: () => {
      const last = undos.at(-1);
      if (!last) return;
      apply.mutate(
        { visit: last.visit, to: last.to, pinned: last.visit.pinned },
        { onSuccess: () => setUndos((before) => before.slice(0, -1)) },
      );
    },
  };
}

/** Where a visit moved by keys begins: where it stands, or where it would cost least when it cannot stay there. */
function whereItBegins({ places }: MovePrices): MovePlace | null {
  return places.find((each) => each.isWhereItStands) ?? places.toSorted((a, b) => a.cents - b.cents)[0] ?? null;
}

/** The place of the strip under the pointer, or why that day cannot take the visit. `x`: left edge of the visit, pixels. */
function underPointer(
  prices: MovePrices,
  track: HTMLElement,
  x: number,
  { axis, minuteOf }: Pick<Options, 'axis' | 'minuteOf'>,
): Pick<Move, 'place' | 'closed'> {
  const { technician, date } = track.dataset as { technician: string; date: string };
  const { left, width } = track.getBoundingClientRect();
  const minute = axis.from + ((x - left) / width) * (axis.to - axis.from);
  const place = nearestPlace(prices, technician, date, minute, (instant) => minuteOf(date, instant));
  return { place, closed: place ? null : closedDay(prices, technician, date) };
}
