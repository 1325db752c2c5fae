import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, isSearched, placeOfTransect } from './check.ts';

/** A searched transect of the first swim with no count and no box "none seen": blank is not zero. */
export const check = checkOf('transect-unresolved', ({ inHand }) =>
  inHand.stations.flatMap((station) =>
    station.transects
      .filter((one) => isSearched(one) && !one.noneSeen && one.tallies.size === 0)
      .map((one) =>
        problemOf('transect-unresolved', placeOfTransect(inHand, station, one), { suggestion: 'none seen' }),
      ),
  ),
);
