/** An earlier survey of the book as the pilot of the next one. */

import { defaultDensitySettings } from '../estimates/density/density-settings.ts';
import { stratumSamples } from '../estimates/density/stratum-sample.ts';
import { clumpedUpperBoundPerHa } from '../estimates/zero-count-bound.ts';
import type { RehearsalStratum } from '../planning/rehearse/rehearsal-request.ts';
import { type PilotSpread, type PilotStratum, pilotSpread } from '../planning/size/pilot-spread.ts';
import { type PlanProblem, planProblem } from '../planning/size/plan-problem.ts';
import { type TransectVariances, transectVariances } from '../planning/size/transect-variances.ts';
import {
  classifyTransect,
  observeSpecies,
  type StationObservation,
  type SurveyInHand,
} from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { estimateDensity } from './estimate-density.ts';
import { type BookWords, readBookWords, speciesAsked, surveysAsked, takeInHand } from './take-in-hand.ts';

/** What can be said of a species that no station of the pilot showed. */
export interface UnseenSpecies {
  readonly species: Species;
  readonly stations: number;
  readonly searchedAreaM2: number;
  /** With the confidence of the reports, if clumped with k. */
  readonly belowPerHa: number;
  readonly clumpingK: number;
  /** Twice the stations, and what they would say by themselves if none is met there either. */
  readonly moreStations: number;
  readonly moreBelowPerHa: number | null;
}

export interface PilotSpecies {
  readonly species: Species;
  readonly strata: readonly PilotStratum[];
  readonly animals: number;
  readonly stationsWithSpecies: number;
  readonly spread: PilotSpread;
  /** Null where stations had one transect each. */
  readonly transects: TransectVariances | null;
}

export interface Pilot {
  readonly survey: string;
  /** The strata with a searched station, with their stations in the pilot. */
  readonly strata: readonly RehearsalStratum[];
  readonly seen: readonly PilotSpecies[];
  readonly unseen: readonly UnseenSpecies[];
  readonly problems: readonly PlanProblem[];
  readonly words: BookWords;
}

/**
 * Reads the stations of an earlier survey for the species asked for; every target when none is.
 *
 * Hand-picked stations have no say, as in an estimate. A species that was never seen has a bound and no CV. What
 * stands in the way is a problem: an area that is missing, a stratum with one station, no station searched.
 */
export async function readPilot(
  store: Store,
  asked: { readonly survey: string; readonly species: readonly string[] },
): Promise<Pilot> {
  const words = await readBookWords(store);
  const survey = surveysAsked(words, asked.survey)[0]!;
  const wanted = asked.species.map((name) => speciesAsked(words, name));
  const { inHand } = await takeInHand(store, words, survey, { lengths: false });
  const species = wanted.length === 0 ? inHand.targets : [...new Set(wanted)];
  const problems: PlanProblem[] = [];
  const seen: PilotSpecies[] = [];
  const unseen: UnseenSpecies[] = [];
  let strata: readonly RehearsalStratum[] = [];
  for (const one of species) {
    const found = strataOf(inHand, one);
    problems.push(...found.problems);
    if (found.strata.length === 0) continue;
    if (strata.length < found.strata.length) strata = found.strata.map(stationsOf);
    if (found.animals === 0) {
      const bound = await boundOf(store, survey.name, one);
      if (bound !== null) unseen.push({ species: one, ...bound });
      continue;
    }
    const spread = pilotSpread(found.strata);
    const { animals, stationsWithSpecies } = found;
    if (spread !== null)
      seen.push({
        ...{ species: one, strata: found.strata, animals, stationsWithSpecies, spread },
        transects: transectVariances(found.transectsPerHa),
      });
    else if (found.problems.every((problem) => problem.severity !== 'stop'))
      problems.push(planProblem('plan-no-spread-anywhere'));
  }
  const alike = seen.filter((one) => isOverAll(one, strata));
  problems.push(
    ...seen
      .filter((one) => !alike.includes(one))
      .map((one) =>
        planProblem('plan-pilot-fewer-strata', {
          ...{ survey: survey.name, species: labelOf(one.species) },
          strata: one.strata.map((stratum) => stratum.name).join(', '),
        }),
      ),
  );
  return { survey: survey.name, strata, seen: alike, unseen, problems: distinct(problems), words };
}

/** A species that was looked for in part of the strata only cannot share a plan of all of them. */
function isOverAll(species: PilotSpecies, strata: readonly RehearsalStratum[]): boolean {
  return species.strata.length === strata.length;
}

function stationsOf({ name, areaHa, valuesPerHa, searchedAreaM2 }: PilotStratum): RehearsalStratum {
  return { name, areaHa, stations: valuesPerHa.length, searchedAreaM2 };
}

function strataOf(inHand: SurveyInHand, species: Species) {
  const settings = { estimator: 'auto', selection: 'random' } as const;
  const survey = inHand.survey.name;
  const all = observeSpecies(inHand, species);
  const samples = stratumSamples(all, inHand.plannedAreaCm2, settings);
  const searched = samples.filter((sample) => sample.observed.length > 0);
  const namesOf = (some: typeof samples) => some.map((sample) => sample.stratum.name).join(', ');
  const empty = namesOf(samples.filter((sample) => sample.observed.length === 0));
  const without = namesOf(searched.filter((sample) => sample.stratum.areaHa === null));
  const lone = namesOf(searched.filter((sample) => sample.observed.length === 1));
  const observed = searched.flatMap((sample) => sample.observed);
  const stationsWithSpecies = observed.filter((one) => one.animals > 0).length;
  const blank = namesOf(searched.filter((sample) => sample.observed.every((one) => one.animals === 0)));
  const unused = all.length - observed.length;
  const name = labelOf(species);
  const needsArea = searched.length > 1 && without !== '';
  const problems = [
    ...(searched.length === 0 ? [planProblem('plan-pilot-no-counts', { survey })] : []),
    ...(needsArea ? [planProblem('plan-area-missing', { strata: without })] : []),
    ...(empty === '' || searched.length === 0
      ? []
      : [planProblem('plan-pilot-stratum-empty', { survey, strata: empty })]),
    ...(lone === '' ? [] : [planProblem('plan-pilot-lone-station', { survey, strata: lone })]),
    ...(blank === '' || stationsWithSpecies === 0
      ? []
      : [planProblem('plan-pilot-stratum-none-seen', { survey, species: name, strata: blank })]),
    ...(unused === 0 || searched.length === 0
      ? []
      : [planProblem('plan-pilot-stations-unused', { survey, species: name, stations: unused })]),
  ];
  const strata = searched.map(({ stratum, observed: own, valuesPerHa }) => ({
    name: stratum.name,
    areaHa: stratum.areaHa ?? 1,
    valuesPerHa,
    searchedAreaM2: own.reduce((total, one) => total + one.searchedAreaCm2, 0) / own.length / 10_000,
  }));
  const animals = observed.reduce((total, one) => total + one.animals, 0);
  const transectsPerHa = searched.map((sample) => sample.observed.map((one) => transectValues(one, species)));
  return { problems, strata: needsArea ? [] : strata, animals, stationsWithSpecies, transectsPerHa };
}

/** Animals per hectare on each belt that counts. */
function transectValues({ station }: StationObservation, species: Species): readonly number[] {
  return station.transects
    .filter((one) => ['counted', 'zero'].includes(classifyTransect(one, species)) && one.areaCm2 > 0)
    .map((one) => ((one.tallies.get(species.id)?.count ?? 0) * 1e8) / one.areaCm2);
}

/** What people call it, as the tables do. */
export function labelOf({ name, commonName }: Species): string {
  return commonName === null ? name : commonName.charAt(0).toUpperCase() + commonName.slice(1);
}

/** The bound that the density verb prints, so that both say the same. */
async function boundOf(store: Store, survey: string, species: Species) {
  const { answers } = await estimateDensity(store, {
    survey,
    species: species.name,
    settings: { ...defaultDensitySettings, selection: 'random' },
  });
  const answer = answers[0];
  const bound = answer?.cautions.find((caution) => caution.code === 'zero-bound')?.parameters;
  if (answer === undefined || bound === undefined) return null;
  const { stations, searchedAreaM2 } = answer;
  const clumpingK = Number(bound['k']);
  const moreStations = 2 * stations;
  const areasHa = Array.from({ length: moreStations }, () => searchedAreaM2 / stations / 10_000);
  return {
    ...{ stations, searchedAreaM2, belowPerHa: Number(bound['clumpedPerHa']), clumpingK, moreStations },
    moreBelowPerHa: clumpedUpperBoundPerHa(areasHa, clumpingK, defaultDensitySettings.confidence),
  };
}

/** What an officer hears about them. */
export function unseenProblems({ unseen, survey }: Pick<Pilot, 'unseen' | 'survey'>): readonly PlanProblem[] {
  return unseen.map((one) =>
    planProblem('plan-pilot-none-seen', {
      ...{ survey, stations: one.stations, areaM2: one.searchedAreaM2, belowPerHa: one.belowPerHa },
      ...{ species: labelOf(one.species), moreStations: one.moreStations },
      moreBelowPerHa: one.moreBelowPerHa ?? '',
    }),
  );
}

/** A lone station is lone for every species: said once. */
function distinct(problems: readonly PlanProblem[]): readonly PlanProblem[] {
  return [...new Map(problems.map((one) => [JSON.stringify(one), one])).values()];
}
