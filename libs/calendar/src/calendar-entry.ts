/** One visit as a calendar shows it. Instants are UTC. */
export interface CalendarEntry {
  /** Never changes while the visit is moved about. */
  readonly uid: string;
  /** Grows with every change of time, place, person or status. */
  readonly sequence: number;
  /** When it last changed so; not "now", so that an unchanged calendar stays the same to the byte. */
  readonly changedAt: Date;
  readonly start: Date;
  readonly end: Date;
  readonly status: 'confirmed' | 'tentative' | 'cancelled';
  readonly summary: string;
  /** Lines of text; may be empty. */
  readonly description: string;
  readonly place: { readonly name: string; readonly latitude: number; readonly longitude: number };
}

export interface Calendar {
  readonly name: string;
  /** IANA zone that a reader may show the times in; the times themselves are UTC. */
  readonly timeZone: string;
  readonly entries: readonly CalendarEntry[];
}
