/** What the divers wrote at one station: its belts, their animals and their lengths. */

import type { SeededRandom } from '../../maths/random.ts';
import type { TallyRow, TransectRow } from '../../survey/table-rows.ts';
import type { Length } from '../../survey/words.ts';
import { type Animal, densityPerHa, type SurveyYear } from './animal.ts';
import { animals } from './animals.ts';
import { bottomCover } from './bottom-cover.ts';
import { drawNormal, drawPoisson } from './chance.ts';
import type { ChosenPlace } from './chosen-places.ts';
import { isSwumTwice, mishapAt } from './mishaps.ts';
import { measureFirst, protocol, surveyName } from './survey-words.ts';

export interface StationToWork {
  readonly year: SurveyYear;
  readonly place: ChosenPlace;
  /** All places of the survey, by which mishaps find theirs. */
  readonly places: readonly ChosenPlace[];
  /** Rate of each species at this station over the mean of its patch. */
  readonly rates: readonly number[];
}

export interface WorkedBelts {
  readonly transects: readonly TransectRow[];
  readonly tallies: readonly TallyRow[];
}

/** Separate chances, so that a change in how bottoms or second divers are drawn leaves the animals alone. */
export interface ChanceOfBelts {
  readonly bottom: SeededRandom;
  readonly animals: SeededRandom;
  readonly secondDiver: SeededRandom;
}

export function workBelts(station: StationToWork, chance: ChanceOfBelts): WorkedBelts {
  const transects: TransectRow[] = [];
  const tallies: TallyRow[] = [];
  for (let number = 1; number <= protocol.transectsPerStation; number++) {
    const belt = layBelt(station, number, chance.bottom);
    const seen = isSearched(belt) ? countBelt(station, belt, chance.animals) : [];
    transects.push(withBox(belt, seen));
    tallies.push(...seen);
    if (!isSwumTwice(station.place, number)) continue;
    const again = seen.flatMap((tally) => countAgain(tally, chance.secondDiver));
    transects.push({ ...withBox(belt, again), swim: 2, note: 'second diver behind the first, counts only' });
    tallies.push(...again);
  }
  return { transects, tallies };
}

function layBelt(station: StationToWork, number: number, random: SeededRandom): TransectRow {
  const { year, place, places } = station;
  const mishap = mishapAt(year, place, number, places);
  const searched = mishap === null || mishap.status === 'partial';
  return {
    survey: surveyName(year),
    station: place.code,
    transect: String(number),
    swim: 1,
    scope: [],
    lengthM: mishap?.lengthM ?? protocol.lengthM,
    widthM: protocol.widthM,
    depthStartM: searched ? depthNear(place, random) : null,
    depthEndM: searched ? depthNear(place, random) : null,
    cover: searched ? bottomCover(place.patch.name, random) : [],
    status: mishap?.status ?? 'done',
    reason: mishap?.reason ?? null,
    noneSeen: false,
    note: null,
  };
}

/** The box "none seen" is marked where a belt was searched and nothing written. */
function withBox(belt: TransectRow, seen: readonly TallyRow[]): TransectRow {
  return { ...belt, noneSeen: isSearched(belt) && seen.length === 0 };
}

function isSearched({ status }: Pick<TransectRow, 'status'>): boolean {
  return status === 'done' || status === 'partial';
}

function countBelt(
  { year, place, rates }: StationToWork,
  belt: TransectRow,
  random: SeededRandom,
): TallyRow[] {
  const areaHa = (belt.lengthM! * belt.widthM!) / 10_000;
  return animals.flatMap((animal, i) => {
    const perHa = densityPerHa(animal, { patch: place.patch.name, zone: place.zone, year }) * rates[i]!;
    const count = drawPoisson(perHa * areaHa, random);
    if (count === 0) return [];
    const { survey, station, transect, swim } = belt;
    const lengths = measureAnimals(animal, Math.min(count, measureFirst), random);
    return [{ survey, station, transect, swim, species: animal.name, count, lengths }];
  });
}

function measureAnimals(animal: Animal, n: number, random: SeededRandom): Length[] {
  return Array.from({ length: n }, () => {
    const contracted = animal.group === 'sea cucumber' && random.below(25) === 0;
    const lengthMm = drawLengthMm(animal, contracted ? 0.85 : 1, random);
    return { lengthMm, n: 1, measure: contracted ? 'body contracted' : animal.measure, photo: null };
  });
}

/** Normal, drawn again where it falls outside what the species can be; whole millimetres. */
function drawLengthMm({ lengthMm }: Animal, shrunkTo: number, random: SeededRandom): number {
  for (;;) {
    const drawn = Math.round(shrunkTo * (lengthMm.mean + lengthMm.sd * drawNormal(random)));
    if (drawn >= lengthMm.least && drawn <= lengthMm.most) return drawn;
  }
}

/** The second diver misses one animal in ten and finds about as many that the first one missed. */
function countAgain(tally: TallyRow, random: SeededRandom): TallyRow[] {
  const first = tally.count ?? 0;
  let count = drawPoisson(first / 10, random);
  for (let i = 0; i < first; i++) if (random.below(10) > 0) count++;
  return count === 0 ? [] : [{ ...tally, swim: 2, count, lengths: [] }];
}

/** Depth in tenths of a metre, never outside the patch. */
function depthNear({ depthM, patch }: ChosenPlace, random: SeededRandom): number {
  const swing = 0.15 * (patch.depthMaxM - patch.depthMinM);
  const tenths = Math.round(10 * (depthM + swing * (2 * random.uniform() - 1)));
  return Math.min(patch.depthMaxM, Math.max(patch.depthMinM, tenths / 10));
}
