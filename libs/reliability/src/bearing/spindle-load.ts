/** Spindle speed, from engine speed and the pulleys between (pitch diameters, any one unit). */
export function spindleRpm(engineRpm: number, drivePulley: number, drivenPulley: number): number {
  return (engineRpm * drivePulley) / drivenPulley;
}

/**
 * Pull of a belt on its pulley's shaft, newtons: both strands for a half wrap, 2 T₀ sin(wrap/2) for static tension T₀ in
 * each strand.
 *
 * @source statics; a running drive pulls about the same while static tension holds (from memory)
 */
export function beltPull(strandTensionN: number, wrapDegrees: number): number {
  return 2 * strandTensionN * Math.sin((wrapDegrees * Math.PI) / 360);
}

/** Rotating force of a blade out of balance: m r ω², newtons. @param gramMillimetres mass times distance off centre */
export function imbalanceForce(gramMillimetres: number, rpm: number): number {
  const omega = (2 * Math.PI * rpm) / 60;
  return gramMillimetres * 1e-6 * omega * omega;
}

/** Where the loads sit along a spindle, mm: the overhang is measured from the nearer bearing outwards. */
export interface SpindleShape {
  readonly bearingDistanceMm: number;
  readonly pulleyOverhangMm: number;
  readonly bladeOverhangMm: number;
}

export interface BearingLoads {
  readonly upperN: number;
  readonly lowerN: number;
}

/**
 * Radial loads of the two bearings by the lever rule, pulley above the upper bearing and blade below the lower one. The
 * blade's force turns while the belt's stands still: for each bearing the two are added, the worst moment of each turn.
 */
export function bearingLoads(beltN: number, bladeN: number, shape: SpindleShape): BearingLoads {
  const { bearingDistanceMm: l, pulleyOverhangMm: a, bladeOverhangMm: b } = shape;
  return {
    upperN: (beltN * (l + a)) / l + (bladeN * b) / l,
    lowerN: (beltN * a) / l + (bladeN * (l + b)) / l,
  };
}
