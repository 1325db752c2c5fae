/** What may be said, given the chance that the density lies below the reference. */
export type StatusClass = 'below' | 'likely below' | 'cannot tell' | 'likely above' | 'above';

/**
 * The words for a chance of being below: .90 and more "below", .66 to .90 "likely below", .34 to .66 "cannot tell", and
 * mirrored above. The classes are a proposal of METHODS k and no standard; the chance stands beside the word.
 */
export function statusClassOf(probabilityBelow: number): StatusClass {
  if (probabilityBelow >= 0.9) return 'below';
  if (probabilityBelow >= 0.66) return 'likely below';
  if (probabilityBelow > 0.34) return 'cannot tell';
  return probabilityBelow > 0.1 ? 'likely above' : 'above';
}
