/** What earlier surveys of the book show about how clumped each species is, under the same protocol. */

import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import { type ClumpedIntervals, createClumpedIntervals } from '../clumped/clumped-intervals.ts';
import { type ClumpedPriors, DEFAULT_CLUMPED_PRIORS } from '../clumped/clumped-priors.ts';
import { COARSE_SIGMAS, createRows, createTools } from '../clumped/posterior-tools.ts';
import { type EarlierCounts, priorFromArchive } from '../clumped/prior-from-archive.ts';

/**
 * Priors by the very counts they were made from. While tonight's sheets come in, a server asks again and again, and
 * what earlier surveys show stays as it is.
 */
const priorsKnown = new Map<string, ClumpedPriors>();
const mostPriorsKnown = 200;

export class Archive {
  readonly #earlier: SurveyInHand[] = [];
  readonly #default = createClumpedIntervals();
  readonly #tools = createTools(DEFAULT_CLUMPED_PRIORS, createRows(COARSE_SIGMAS));
  readonly #bySpecies = new Map<string, ClumpedIntervals>();

  remember(survey: SurveyInHand): void {
    this.#earlier.push(survey);
    this.#bySpecies.clear();
  }

  /** The clumped-count intervals with the prior that the earlier surveys of this species and protocol support. */
  intervalsFor(species: Species, survey: SurveyInHand): ClumpedIntervals {
    const key = `${survey.protocol?.id ?? ''} ${species.id}`;
    const known = this.#bySpecies.get(key);
    if (known !== undefined) return known;
    const intervals = this.#default.withPriors(this.#priorFrom(this.#earlierCounts(species, survey)));
    this.#bySpecies.set(key, intervals);
    return intervals;
  }

  /** Found again where the same counts were asked about before: of a large archive they take a tenth of a second a species. */
  #priorFrom(earlier: readonly EarlierCounts[]): ClumpedPriors {
    const key = JSON.stringify(earlier);
    const known = priorsKnown.get(key);
    if (known !== undefined) return known;
    const prior = priorFromArchive(earlier, this.#tools);
    if (priorsKnown.size >= mostPriorsKnown) priorsKnown.clear();
    priorsKnown.set(key, prior);
    return prior;
  }

  /** Station counts of each earlier survey and stratum, since one stratum has one mean. */
  #earlierCounts(species: Species, survey: SurveyInHand): readonly EarlierCounts[] {
    return this.#earlier
      .filter((one) => one.protocol?.id === survey.protocol?.id && one.survey.id !== survey.survey.id)
      .flatMap((one) => countsByStratum(one, species));
  }
}

function countsByStratum(survey: SurveyInHand, species: Species): readonly EarlierCounts[] {
  const strata = new Map<string, { animals: number; areaM2: number }[]>();
  for (const one of observeSpecies(survey, species)) {
    if (one.state !== 'observed' || one.searchedAreaCm2 === 0) continue;
    const id = one.station.stratum.id;
    const counts = strata.get(id) ?? [];
    counts.push({ animals: one.animals, areaM2: one.searchedAreaCm2 / 10_000 });
    strata.set(id, counts);
  }
  return [...strata.values()];
}
