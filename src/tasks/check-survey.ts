/** The questions that an import and an estimate need answered, survey by survey. */

import type { Place, Problem } from '../survey/message.ts';
import type { StationWithTransects, SurveyInHand } from '../survey/observation.ts';
import { problemOf } from '../survey/problem-of.ts';
import type { Store } from '../survey/store.ts';
import type { Stratum } from '../survey/words.ts';
import { readBookWords, type SurveyOpened, surveysAsked, takeInHand } from './take-in-hand.ts';

export async function checkSurveys(
  store: Store,
  survey: string | null,
): Promise<{ readonly problems: readonly Problem[]; readonly dataVersion: string }> {
  const words = await readBookWords(store);
  const problems: Problem[] = [];
  for (const one of surveysAsked(words, survey)) {
    problems.push(...askedOf(await takeInHand(store, words, one, { lengths: false })));
  }
  return { problems, dataVersion: await store.dataVersion() };
}

/** Every question about one opened survey. */
export function askedOf(opened: SurveyOpened): readonly Problem[] {
  const { inHand } = opened;
  return [
    ...stationQuestions(inHand),
    ...stratumQuestions(inHand),
    ...selectionQuestions(inHand),
    ...targetQuestions(opened),
  ];
}

function stationQuestions(inHand: SurveyInHand): Problem[] {
  return inHand.stations.flatMap((station) => {
    const place = placeOf(inHand, station);
    if (station.transects.length === 0) return [problemOf('station-unresolved', place)];
    return [...transectQuestions(station, place), ...areaQuestions(station, place, inHand.plannedAreaCm2)];
  });
}

function transectQuestions(station: StationWithTransects, place: Place): Problem[] {
  return station.transects.flatMap((transect): Problem[] => {
    const { record } = transect;
    const here = { ...place, transect: record.code, swim: record.swim };
    const searched = record.status === 'done' || record.status === 'partial';
    const found: Problem[] = [];
    if (searched && !record.noneSeen && transect.tallies.size === 0) {
      found.push(problemOf('transect-unresolved', here, { suggestion: 'none seen' }));
    }
    if (record.status === 'partial' && record.reason === null) {
      found.push(problemOf('partial-without-reason', here, { value: record.lengthM }));
    }
    return found;
  });
}

/** A station that searched less than a third of the plan is a fragment: it stays, with a question. */
function areaQuestions(
  station: StationWithTransects,
  place: Place,
  plannedAreaCm2: number | null,
): Problem[] {
  const counting = station.transects.filter((one) => one.status === 'done' || one.status === 'partial');
  const areaCm2 = counting.reduce((total, one) => total + one.areaCm2, 0);
  if (plannedAreaCm2 === null || areaCm2 === 0 || 3 * areaCm2 >= plannedAreaCm2) return [];
  const parameters = { areaM2: areaCm2 / 10_000, plannedM2: plannedAreaCm2 / 10_000 };
  return [problemOf('station-small-area', place, { value: parameters.areaM2, parameters })];
}

function stratumQuestions(inHand: SurveyInHand): Problem[] {
  const strata = new Map<string, { stratum: Stratum; stations: number }>();
  for (const { stratum } of inHand.stations) {
    const known = strata.get(stratum.id) ?? { stratum, stations: 0 };
    strata.set(stratum.id, { stratum, stations: known.stations + 1 });
  }
  return [...strata.values()].flatMap(({ stratum, stations }) => {
    const place = { survey: inHand.survey.name };
    const parameters = { stratum: stratum.name };
    const found: Problem[] = [];
    if (stratum.areaHa === null) {
      found.push(problemOf('stratum-area-missing', place, { value: stratum.name, parameters }));
    }
    if (stations === 1) {
      found.push(problemOf('lone-station-in-stratum', place, { value: stratum.name, parameters }));
    }
    return found;
  });
}

function selectionQuestions(inHand: SurveyInHand): Problem[] {
  const place = { survey: inHand.survey.name };
  const handPicked = inHand.stations.filter((one) => one.record.selection === 'hand-picked').length;
  const unknown = inHand.stations.filter((one) => one.record.selection === null).length;
  const found: Problem[] = [];
  if (handPicked > 0 && handPicked < inHand.stations.length) {
    const parameters = { handPicked, random: inHand.stations.length - handPicked };
    found.push(problemOf('selection-mixed', place, { value: handPicked, parameters }));
  }
  if (unknown > 0) {
    const parameters = { stations: unknown, of: inHand.stations.length };
    found.push(problemOf('selection-unknown', place, { value: unknown, parameters }));
  }
  return found;
}

function targetQuestions({ inHand, targetList }: SurveyOpened): Problem[] {
  const place = { survey: inHand.survey.name };
  const undeclared = targetList.undeclared.map((species) =>
    problemOf('counted-but-no-target', { ...place, species: species.name }, { value: species.name }),
  );
  if (targetList.madeFrom === 'declared') return undeclared;
  const list = targetList.species.map((species) => species.name).join(', ');
  const parameters = { species: list, madeFrom: targetList.madeFrom };
  return [
    ...undeclared,
    problemOf('targets-assumed', place, { value: targetList.species.length, parameters }),
  ];
}

function placeOf(inHand: SurveyInHand, station: StationWithTransects): Place {
  return { survey: inHand.survey.name, station: station.record.code };
}
