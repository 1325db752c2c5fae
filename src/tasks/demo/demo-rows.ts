/**
 * The invented survey book: three surveys of islands that do not exist, as import tables.
 * Tests, handbook and demo all use it, so that everybody talks about the same numbers.
 */

import { type SeededRandom, seededRandom } from '../../maths/random.ts';
import type { Placed, StationRow, TableRows, TallyRow, TransectRow } from '../../survey/table-rows.ts';
import type { SurveyYear } from './animal.ts';
import { separate } from './chance.ts';
import { type ChosenPlace, choosePlaces } from './chosen-places.ts';
import { planVisits } from './field-days.ts';
import { isAborted } from './mishaps.ts';
import { drawStationRates } from './station-rates.ts';
import { stationRow } from './station-rows.ts';
import { limitRows, protocol, speciesRows, stratumRows, surveyRows, targetRows } from './survey-words.ts';
import { weighAnimals } from './weighed-animals.ts';
import { workBelts } from './worked-belts.ts';

/**
 * All tables of the Lorrin Islands for a seed. The same seed gives the same rows on every machine that runs
 * this program; another seed gives other places and other animals under the same truth.
 *
 * Everything is invented. The true densities are those of `animals.ts`, so an estimate can be held against them.
 */
export function demoRows(seed = 1): TableRows {
  const random = seededRandom(seed + story);
  const places = choosePlaces(separate(random));
  const rates = drawStationRates(places, separate(random));
  const stations: StationRow[] = [];
  const transects: TransectRow[] = [];
  const tallies: TallyRow[] = [];
  for (const [year, chosen] of places) {
    const worked = workSurvey({ year, places: chosen, rates: rates.get(year)! }, separate(random));
    stations.push(...worked.stations);
    transects.push(...worked.transects);
    tallies.push(...worked.tallies);
  }
  return {
    strata: placed(stratumRows()),
    protocols: placed([protocol]),
    surveys: placed(surveyRows(stations)),
    stations: placed(stations),
    transects: placed(transects),
    tallies: placed(tallies),
    species: placed(speciesRows()),
    weights: placed(weighAnimals(tallies, separate(random))),
    targets: placed(targetRows()),
    limits: placed(limitRows()),
  };
}

/** Added to every seed. Picked by hand, so that seed 1 tells the story of the handbook and not an odd year. */
const story = 1913;

interface SurveyToWork {
  readonly year: SurveyYear;
  readonly places: readonly ChosenPlace[];
  readonly rates: ReadonlyMap<string, readonly number[]>;
}

function workSurvey({ year, places, rates }: SurveyToWork, random: SeededRandom) {
  const chance = { bottom: separate(random), animals: separate(random), secondDiver: separate(random) };
  const worked = places.map((place) => {
    const { transects, tallies } = workBelts({ year, place, places, rates: rates.get(place.code)! }, chance);
    const animals = tallies.reduce((total, tally) => total + (tally.swim === 1 ? (tally.count ?? 0) : 0), 0);
    return { place, transects, tallies, animals, aborted: isAborted(year, place, places) };
  });
  const visits = planVisits(year, worked, separate(random));
  const rows = separate(random);
  return {
    stations: worked.map(({ place, aborted }) =>
      stationRow({ year, place, visit: visits.get(place.code)!, aborted }, rows),
    ),
    transects: worked.flatMap((station) => station.transects),
    tallies: worked.flatMap((station) => station.tallies),
  };
}

/** Row 1 of a table is its header. */
function placed<Row>(rows: readonly Row[]): Placed<Row>[] {
  return rows.map((row, index) => ({ row, place: { file: 'demo', row: index + 2 } }));
}
