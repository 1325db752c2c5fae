/** What earlier surveys of the book show about how clumped each species is, under the same protocol. */

import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import { type ClumpedIntervals, createClumpedIntervals } from '../clumped/clumped-intervals.ts';
import { DEFAULT_CLUMPED_PRIORS } from '../clumped/clumped-priors.ts';
import { COARSE_SIGMAS, createRows, createTools } from '../clumped/posterior-tools.ts';
import { type EarlierCounts, priorFromArchive } from '../clumped/prior-from-archive.ts';

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
    const intervals = this.#default.withPriors(
      priorFromArchive(this.#earlierCounts(species, survey), this.#tools),
    );
    this.#bySpecies.set(key, intervals);
    return intervals;
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
