/** The estimates of the archive, and the bare reading and drawing beside them. */

import { DatabaseSync } from 'node:sqlite';
import { createClumpedIntervals } from '../src/estimates/clumped/clumped-intervals.ts';
import { DensityEstimator } from '../src/estimates/density/density-estimator.ts';
import { defaultDensitySettings } from '../src/estimates/density/density-settings.ts';
import { seededRandom } from '../src/maths/random.ts';
import { observeSpecies, type SurveyInHand } from '../src/survey/observation.ts';
import type { Store } from '../src/survey/store.ts';
import { readBookWords, takeInHand } from '../src/tasks/take-in-hand.ts';

/** Every row of the tables, once, as objects. `columns` are those asked of the tallies. */
export function bareScan(file: string, columns: string): number {
  const database = new DatabaseSync(file);
  let rows = 0;
  for (const query of [
    'SELECT * FROM stations',
    'SELECT * FROM transects',
    `SELECT ${columns} FROM tallies`,
  ]) {
    for (const _ of database.prepare(query).iterate()) rows++;
  }
  database.close();
  return rows;
}

/** Every survey of the book, read and joined as an estimate needs it. */
export async function takeAll(store: Store): Promise<readonly SurveyInHand[]> {
  const words = await readBookWords(store);
  const taken: SurveyInHand[] = [];
  for (const survey of words.surveys) {
    taken.push((await takeInHand(store, words, survey, { lengths: false })).inHand);
  }
  return taken;
}

/** The animals of every species at every station: the part of an estimate before its sums. */
export function observeAll(surveys: readonly SurveyInHand[]) {
  return surveys.map((survey) => survey.targets.map((species) => observeSpecies(survey, species)));
}

/** Every species by stratum in every survey. */
export function estimateAll(
  surveys: readonly SurveyInHand[],
  interval: 'lognormal' | 'percentile' | 'clumped',
  draws: number,
) {
  const estimator = new DensityEstimator({ ...defaultDensitySettings, by: 'stratum', interval, draws });
  return surveys.flatMap((survey) => survey.targets.flatMap((species) => estimator.answers(survey, species)));
}

/** The picks and sums of as many resampled means for every species and stratum, and nothing else. */
export function bareDrawing(surveys: readonly SurveyInHand[], draws: number): number {
  let total = 0;
  for (const animals of surveys.flatMap(animalsByStratum)) {
    if (animals.every((count) => count === 0)) continue;
    const random = seededRandom(1);
    for (let pick = draws * animals.length; pick > 0; pick--) total += animals[random.below(animals.length)]!;
  }
  return total;
}

/** The animals of each station, one list for each species and stratum. */
function animalsByStratum(survey: SurveyInHand): readonly (readonly number[])[] {
  return survey.targets.flatMap((species) => {
    const strata = new Map<string, number[]>();
    for (const { station, animals } of observeSpecies(survey, species)) {
      const list = strata.get(station.stratum.id);
      if (list === undefined) strata.set(station.stratum.id, [animals]);
      else list.push(animals);
    }
    return [...strata.values()];
  });
}

/** Milliseconds of each clumped-count interval of 200 samples of ten stations. */
export function fewStationsMs(): readonly number[] {
  const intervals = createClumpedIntervals();
  const random = seededRandom(7);
  const timesMs: number[] = [];
  while (timesMs.length < 200) {
    const stations = Array.from({ length: 10 }, () => ({
      animals: random.below(3) === 0 ? random.below(60) : random.below(4),
      areaM2: 480,
    }));
    if (stations.every((station) => station.animals === 0)) continue;
    const start = performance.now();
    intervals.posterior(stations).interval(0.95);
    timesMs.push(performance.now() - start);
  }
  return timesMs;
}
