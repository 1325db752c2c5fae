/** Where a number comes from: stations, belts and animals of one species in one survey. */

import {
  classifyTransect,
  observeSpecies,
  type StationObservation,
  type TransectWithTallies,
} from '../../survey/observation.ts';
import type { Store } from '../../survey/store.ts';
import type { Species } from '../../survey/words.ts';
import { readBookWords, speciesAsked, surveysAsked, takeInHand } from '../take-in-hand.ts';
import type { Explained } from './answer-schemas.ts';

export interface ExplainRequest {
  readonly survey: string;
  /** By any of its names. */
  readonly species: string;
  /** One station only, by its code; null for all. */
  readonly station: string | null;
}

export async function explainCount(store: Store, request: ExplainRequest): Promise<Explained> {
  const words = await readBookWords(store);
  const species = speciesAsked(words, request.species);
  const survey = surveysAsked(words, request.survey)[0]!;
  const { inHand } = await takeInHand(store, words, survey, { lengths: true });
  const stations = observeSpecies(inHand, species)
    .filter(({ station }) => request.station === null || station.record.code === request.station)
    .map((observation) => stationRow(observation, species));
  return { dataVersion: await store.dataVersion(), survey: survey.name, species: species.name, stations };
}

function stationRow(observation: StationObservation, species: Species): Explained['stations'][number] {
  const { station, state, animals, searchedAreaCm2 } = observation;
  const areaM2 = searchedAreaCm2 / 10_000;
  return {
    id: station.record.id,
    code: station.record.code,
    stratum: station.stratum.name,
    date: station.record.date,
    state,
    animals,
    searchedAreaM2: areaM2,
    densityPerHa: areaM2 > 0 ? (animals * 10_000) / areaM2 : null,
    transects: [
      ...station.transects.map((belt) => beltRow(belt, classifyTransect(belt, species), species)),
      ...station.laterSwims.map((belt) => beltRow(belt, 'later swim', species)),
    ],
  };
}

function beltRow(
  { record, areaCm2, tallies }: TransectWithTallies,
  state: string,
  species: Species,
): Explained['stations'][number]['transects'][number] {
  const tally = tallies.get(species.id);
  const lengthsMm = (tally?.lengths ?? []).flatMap(({ lengthMm, n }) => Array<number>(n).fill(lengthMm));
  const isZero = state === 'zero';
  return {
    id: record.id,
    code: record.code,
    swim: record.swim,
    state,
    status: record.status,
    areaM2: areaCm2 / 10_000,
    // A blank says nothing, so it has no count.
    count: tally?.count ?? (isZero ? 0 : null),
    countedOnly: tally === undefined ? (isZero ? 0 : null) : tally.count - lengthsMm.length,
    lengthsMm,
  };
}
