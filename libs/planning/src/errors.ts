/** The snapshot names something that it does not contain. */
export class SnapshotInconsistent extends Error {
  readonly code = 'planning.snapshot-inconsistent';
}
