/** The French catalogue of reasons and failures, of the same codes as the English, spaced as French is. */

import { failuresFr } from './failures.ts';
import { holdsInWordsFr, reasonsFr } from './reasons.ts';
import { reasonsOnPaperFr } from './reasons-on-paper.ts';
import { frenchSpaced } from './typography.ts';

export const french = {
  reasons: frenchSpaced(reasonsFr),
  onPaper: frenchSpaced(reasonsOnPaperFr),
  failures: frenchSpaced(failuresFr),
  holds: holdsInWordsFr,
};
