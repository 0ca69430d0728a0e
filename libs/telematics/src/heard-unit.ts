/** One machine as a telematics sender tells of it. Texts are exactly the sender's, without spaces around them. */
export interface HeardUnit {
  readonly maker: string | null;
  readonly model: string | null;
  /** The owner's own label for it: it may change, and stand on two machines. */
  readonly equipmentId: string | null;
  /** Text, though it may look like a number: `00123E45` is no power of ten. */
  readonly serial: string | null;
  readonly pin: string | null;
  /** The hour meter and when it stood so; null = none was told, or one that cannot be used (see `fault`). */
  readonly hours: { readonly at: string; readonly hours: string } | null;
  /** Why the hours cannot be used; null = they can, or there are none. */
  readonly fault: string | null;
}

export interface SnapshotLink {
  readonly rel: string;
  readonly href: string;
}

export type SnapshotItem =
  | { readonly kind: 'unit'; readonly unit: HeardUnit }
  | { readonly kind: 'link'; readonly link: SnapshotLink };

/** The document cannot be read; what was read before the fault stands. `message` says where and why. */
export class InvalidSnapshot extends Error {
  override readonly name = 'InvalidSnapshot';
}
