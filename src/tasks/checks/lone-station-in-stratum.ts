import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';
import { stationsByStratum } from './stations-by-stratum.ts';

/** One station has no spread, so its stratum has no standard error. */
export const check = checkOf('lone-station-in-stratum', ({ inHand }) =>
  stationsByStratum(inHand)
    .filter(({ stations }) => stations.length === 1)
    .map(({ stratum }) =>
      problemOf(
        'lone-station-in-stratum',
        { survey: inHand.survey.name },
        { value: stratum.name, parameters: { stratum: stratum.name } },
      ),
    ),
);
