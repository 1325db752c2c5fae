/** What earlier surveys of the book show about how clumped each species is, under the same protocol. */

import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import { type ClumpedIntervals, createClumpedIntervals } from '../clumped/clumped-intervals.ts';
import type { ClumpingShown } from '../clumped/clumping-shown.ts';
import { clumpingShownBy, type EarlierCounts, priorFromClumping } from '../clumped/prior-from-archive.ts';

/** Shared by all archives: it only remembers what was computed, and forgets by itself when that grows large. */
const intervals = createClumpedIntervals();

export class Archive {
  readonly #earlier: SurveyInHand[] = [];
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
    const shown = this.#earlier
      .filter((one) => one.protocol?.id === survey.protocol?.id && one.survey.id !== survey.survey.id)
      .flatMap((one) => shownBy(one, species));
    const found = intervals.withPriors(priorFromClumping(shown));
    this.#bySpecies.set(key, found);
    return found;
  }
}

/**
 * What each survey shows, by its very stations: worked out once for as long as somebody holds them, whichever answer
 * asks and whatever was saved to other surveys. The stations are values that never change; a survey that was read
 * again has other ones.
 */
const shownByStations = new WeakMap<SurveyInHand['stations'], Map<string, readonly ClumpingShown[]>>();

function shownBy(survey: SurveyInHand, species: Species): readonly ClumpingShown[] {
  const known = shownByStations.get(survey.stations) ?? new Map<string, readonly ClumpingShown[]>();
  shownByStations.set(survey.stations, known);
  // All that an observation asks of a species.
  const key = JSON.stringify([species.id, species.name, species.group]);
  const before = known.get(key);
  if (before !== undefined) return before;
  const shown = countsByStratum(survey, species)
    .map(clumpingShownBy)
    .filter((one) => one !== null);
  known.set(key, shown);
  return shown;
}

/** Station counts of each stratum, since one stratum has one mean. */
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
