/** How often the usual comparison of two surveys like these would report a change where there is none. */

import type { ChangeAnswer } from '../../estimates/change/change-answer.ts';
import { type CommonStratum, type ComparedStation, commonPart } from '../../estimates/change/common-part.ts';
import type { ChangeSettings } from '../../estimates/change/estimate-change.ts';
import { seededRandom } from '../../maths/random.ts';
import { mean } from '../../maths/variance.ts';
import { toldBetween } from '../../planning/rehearse/two-surveys.ts';
import { pilotSpread } from '../../planning/size/pilot-spread.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';

const simulations = 400;

/**
 * Share of simulated pairs of surveys, with the densities and the clumping of the earlier one and no change between
 * them, in which the log ratio's interval leaves out 1. What it promises is one minus the confidence.
 *
 * Only for all strata together and stations drawn anew; null elsewhere, and where the earlier survey shows no spread.
 */
export function falseAlarmByDesign(
  two: { readonly from: SurveyInHand; readonly to: SurveyInHand; readonly species: Species },
  answer: ChangeAnswer,
  settings: Pick<ChangeSettings, 'pairing' | 'confidence' | 'seed'>,
): number | null {
  if (answer.scope.by !== 'survey' || answer.pairs > 0 || answer.atTheseStations) return null;
  if (answer.logRatio === null) return null;
  const { strata } = commonPart(two, settings.pairing);
  if (strata.some((one) => one.from.length < 2 || one.to.length < 2)) return null;
  const pilot = strata.map((one) => ({
    name: one.name,
    areaHa: one.areaHa ?? 1,
    valuesPerHa: one.from.map((station) => station.valuePerHa),
    searchedAreaM2: searchedM2(one.from),
  }));
  const spread = pilotSpread(pilot);
  if (spread === null) return null;
  const side = (which: 'from' | 'to') => strata.map((one) => rehearsed(one, which));
  const { told } = toldBetween(
    {
      before: side('from'),
      after: side('to'),
      species: { densitiesPerHa: spread.densitiesPerHa, clumpingK: spread.clumpingK },
      factor: 1,
      confidence: settings.confidence,
      simulations,
    },
    seededRandom(settings.seed),
  );
  return told;
}

function rehearsed(stratum: CommonStratum, which: 'from' | 'to') {
  const stations = stratum[which];
  const { name, areaHa } = stratum;
  return { name, areaHa: areaHa ?? 1, stations: stations.length, searchedAreaM2: searchedM2(stations) };
}

function searchedM2(stations: readonly ComparedStation[]): number {
  return mean(stations.map(({ observation }) => observation.searchedAreaCm2 / 10_000));
}
