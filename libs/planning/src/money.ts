/**
 * The search counts in sixtieths of a cent, so that a wage in cents per hour is an integer per minute:
 * 1 cent per hour × 1 minute = 1 unit.
 */
export const UNITS_PER_CENT = 60;
