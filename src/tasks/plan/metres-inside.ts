/** Metres of a series that lie on the ground, in whole metres, or in tenths where whole ones would hide what is missing. */
export function metresInside(insideM: number, laidM: number): number {
  const whole = Math.round(insideM);
  return whole < laidM ? whole : Math.floor(Math.min(insideM, laidM - 0.1) * 10) / 10;
}
