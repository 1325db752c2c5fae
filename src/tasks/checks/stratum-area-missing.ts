import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';
import { stationsByStratum } from './stations-by-stratum.ts';

/** Without its hectares a stratum cannot be weighed against the others. */
export const check = checkOf('stratum-area-missing', ({ inHand }) =>
  stationsByStratum(inHand)
    .filter(({ stratum }) => stratum.areaHa === null)
    .map(({ stratum }) =>
      problemOf(
        'stratum-area-missing',
        { survey: inHand.survey.name },
        { value: stratum.name, parameters: { stratum: stratum.name } },
      ),
    ),
);
