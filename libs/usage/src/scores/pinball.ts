/**
 * Pinball loss of a quantile forecast: τ(y − q) when y ≥ q, else (1 − τ)(q − y); in the unit of y, least when q is the
 * τ-quantile.
 *
 * @source Koenker & Bassett 1978, from memory
 */
export function pinballLoss(outcome: number, quantile: number, tau: number): number {
  return outcome >= quantile ? tau * (outcome - quantile) : (1 - tau) * (quantile - outcome);
}
