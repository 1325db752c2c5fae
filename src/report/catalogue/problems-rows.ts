/** What rows say about each other: names that lead nowhere, and counts that cannot both be true. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

export const problemsRows = {
  'unknown-species': 'species “{value}” is not in the species list[; did you mean {suggestion}?]',
  'species-spelling': 'species “{value}” is new here; is it {suggestion}?',
  'unknown-survey': 'survey “{value}” is not among the surveys[; did you mean {suggestion}?]',
  'unknown-protocol': 'protocol “{value}” is not among the protocols[; did you mean {suggestion}?]',
  'unknown-station':
    'station “{value}” is not among the stations of this survey[; did you mean {suggestion}?]',
  'unknown-transect':
    'transect “{value}” is not among the transects of this station[; did you mean {suggestion}?]',
  'station-without-stratum':
    'this station has no stratum, so it stands for no area; give the stratum it lies in[: {suggestion}?]',
  'unknown-stratum': 'stratum “{value}” is not among the strata[; did you mean {suggestion}?]',
  'repeated-row': '“{value}” stands already[ in row {firstRow}][ of {firstFile}]; keep one of the two rows',
  'lengths-without-count':
    'animals were measured here[ ({value})] and not counted; give the count of all animals, measured ones included[: at least {suggestion}?]',
  'more-lengths-than-animals':
    '{value} {value:animal was|animals were} measured[, but {count} counted]; the count includes the measured ones[; {suggestion}?]',
  'count-on-lost-transect':
    'a count of {value} stands on a transect that is marked lost or not done[ ({status})]; which is right?',
  'none-seen-but-counted':
    'the box “none seen” is ticked, and {value} {value:animal is|animals are} counted; which is right?',
} as const satisfies Partial<Record<ProblemCode, string>>;
