/** Percent per year over three or more surveys of the book, over the strata that all of them worked. */

import { blankLeftOut } from '../estimates/change/blank-left-out.ts';
import { type ComparedAspect, comparabilityOf, isHandPicked } from '../estimates/change/comparability.ts';
import { type Trend, trendOf } from '../estimates/change/trend.ts';
import type { Acceptance } from '../estimates/density/density-settings.ts';
import { stratumSamples } from '../estimates/density/stratum-sample.ts';
import { stratifiedMean } from '../estimates/stratified-mean.ts';
import { Failure } from '../survey/failure.ts';
import type { Reason } from '../survey/message.ts';
import { observeSpecies, type SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { readBookWords, speciesAsked, surveysAsked, takeInHand } from './take-in-hand.ts';

export interface TrendRequest {
  readonly species: string | null;
  /** Names; empty for all surveys of the book. */
  readonly surveys: readonly string[];
  readonly confidence: number;
  readonly acceptance: Acceptance | null;
}

export interface TrendOfSurvey {
  readonly survey: string;
  /** Middle of the survey's days, as a year with its fraction. */
  readonly year: number;
  readonly stations: number;
  readonly animals: number;
  readonly densityPerHa: number | null;
  readonly standardErrorPerHa: number | null;
  readonly onTheLine: boolean;
}

export interface TrendAnswer {
  readonly species: string;
  readonly strata: readonly string[];
  readonly surveys: readonly TrendOfSurvey[];
  readonly trend: Trend | null;
  readonly told: 'falling' | 'rising' | 'cannot tell' | null;
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

export interface TrendResult {
  readonly answers: readonly TrendAnswer[];
  /** Each survey against the one before it. */
  readonly comparability: readonly {
    readonly from: string;
    readonly to: string;
    readonly aspects: readonly ComparedAspect[];
  }[];
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

/** Throws a Failure when fewer than three surveys are there or named. */
export async function followTrend(store: Store, request: TrendRequest): Promise<TrendResult> {
  const words = await readBookWords(store);
  const named = request.surveys.flatMap((name) => surveysAsked(words, name));
  const surveys =
    named.length === 0 ? surveysAsked(words, null) : words.surveys.filter((one) => named.includes(one));
  if (surveys.length < 3) throw new Failure('trend-needs-three', { surveys: surveys.length });
  const opened: SurveyInHand[] = [];
  for (const survey of surveys) {
    opened.push((await takeInHand(store, words, survey, { lengths: false })).inHand);
  }
  const comparability = opened.slice(1).map((to, i) => ({
    from: opened[i]!.survey.name,
    to: to.survey.name,
    aspects: comparabilityOf(opened[i]!, to).aspects,
  }));
  const held =
    comparability.flatMap((pair) => pair.aspects).find((one) => one.verdict === 'held')?.reason ?? null;
  const asked = request.species === null ? opened.at(-1)!.targets : [speciesAsked(words, request.species)];
  const answers = asked.map((species) =>
    held !== null && request.acceptance === null
      ? { ...emptyTrend(species), reason: held }
      : trendOfSpecies(species, opened, request),
  );
  return { answers, comparability, species: words.species, dataVersion: await store.dataVersion() };
}

function emptyTrend(species: Species): TrendAnswer {
  return {
    species: species.name,
    strata: [],
    surveys: [],
    trend: null,
    told: null,
    reason: null,
    cautions: [],
  };
}

function trendOfSpecies(
  species: Species,
  surveys: readonly SurveyInHand[],
  request: TrendRequest,
): TrendAnswer {
  const missing = surveys.find((one) => !one.targets.some((target) => target.id === species.id));
  if (missing !== undefined) {
    const parameters = { species: species.name, survey: missing.survey.name };
    return { ...emptyTrend(species), reason: { code: 'change-not-a-target', parameters } };
  }
  const samples = surveys.map((survey) =>
    stratumSamples(observeSpecies(survey, species), survey.plannedAreaCm2, {
      estimator: 'auto',
      selection: 'random',
    }),
  );
  const unresolved = samples
    .flat()
    .flatMap((one) => one.all.filter((station) => station.state === 'unresolved'));
  if (unresolved.length > 0 && request.acceptance === null) {
    const stations = unresolved.map((one) => one.station.record.code).join(', ');
    const parameters = { count: unresolved.length, stations, where: 'the surveys' };
    return { ...emptyTrend(species), reason: { code: 'unresolved-stations', parameters } };
  }
  const worked = samples.map((list) => list.filter((one) => one.observed.length > 0));
  const strata = worked[0]!
    .map((one) => one.stratum)
    .filter((stratum) => worked.every((list) => list.some((one) => one.stratum.id === stratum.id)));
  const blank = { ...emptyTrend(species), strata: strata.map((one) => one.name) };
  if (surveys.some(({ stations }) => stations.every(isHandPicked))) {
    return { ...blank, reason: { code: 'trend-hand-picked', parameters: {} } };
  }
  if (strata.length === 0) {
    return { ...blank, reason: { code: 'change-no-common-stratum', parameters: { from: '', to: '' } } };
  }
  const withoutArea = strata.filter((one) => one.areaHa === null).map((one) => one.name);
  if (strata.length > 1 && withoutArea.length > 0) {
    return {
      ...blank,
      reason: { code: 'stratum-without-area', parameters: { strata: withoutArea.join(', ') } },
    };
  }
  const rows = surveys.map((survey, i): TrendOfSurvey => {
    const own = worked[i]!.filter((one) => strata.some((stratum) => stratum.id === one.stratum.id));
    const found = stratifiedMean(
      own.map((one) => ({
        name: one.stratum.name,
        weight: strata.length === 1 ? 1 : one.stratum.areaHa!,
        values: one.valuesPerHa,
        populationUnits: null,
      })),
    );
    const observed = own.flatMap((one) => one.observed);
    const animals = observed.reduce((total, one) => total + one.animals, 0);
    return {
      survey: survey.survey.name,
      year: middleYear(survey),
      stations: observed.length,
      animals,
      densityPerHa: found.value,
      // Nothing seen has no spread: a zero would claim certainty.
      standardErrorPerHa: animals === 0 ? null : found.standardError,
      onTheLine:
        animals > 0 && found.value !== null && found.standardError !== null && found.standardError > 0,
    };
  });
  const line = lineThrough(rows, species, request.confidence);
  return { ...blank, surveys: rows, ...line, cautions: [...blankLeftOut(unresolved), ...line.cautions] };
}

function lineThrough(rows: readonly TrendOfSurvey[], species: Species, confidence: number) {
  const onTheLine = rows.filter((one) => one.onTheLine);
  const namesOf = (some: readonly TrendOfSurvey[]) => some.map((one) => one.survey).join(', ');
  const noneSeen = rows.filter((one) => one.animals === 0);
  const noSpread = rows.filter((one) => one.animals > 0 && !one.onTheLine);
  const cautions: Reason[] = [];
  const times = new Set(onTheLine.map((one) => one.year)).size;
  // Without a line there is none that a zero could be missing from.
  if (noneSeen.length > 0 && times >= 3)
    cautions.push({ code: 'trend-none-seen-in', parameters: { surveys: namesOf(noneSeen) } });
  if (noSpread.length > 0)
    cautions.push({ code: 'trend-no-spread-in', parameters: { surveys: namesOf(noSpread) } });
  if (times < 3) {
    const parameters = { species: species.name, surveys: times };
    return { trend: null, told: null, reason: { code: 'trend-too-few', parameters } as const, cautions };
  }
  const trend = trendOf(
    onTheLine.map((one) => ({
      year: one.year,
      densityPerHa: one.densityPerHa!,
      cv: one.standardErrorPerHa! / one.densityPerHa!,
    })),
    confidence,
  );
  if (trend.heterogeneity.pValue < 1 - confidence) {
    cautions.push({ code: 'trend-uneven', parameters: { percent: 100 * trend.heterogeneity.pValue } });
  }
  const [low, high] = trend.intervalPercent;
  const told = high < 0 ? ('falling' as const) : low > 0 ? ('rising' as const) : ('cannot tell' as const);
  return { trend, told, reason: null, cautions };
}

function middleYear({ stations }: SurveyInHand): number {
  const days = stations.map(({ record }) => Date.parse(`${record.date}T12:00:00Z`)).toSorted((a, b) => a - b);
  const middle = new Date((days[0]! + days.at(-1)!) / 2);
  const year = middle.getUTCFullYear();
  const start = Date.UTC(year, 0, 1);
  return year + (middle.getTime() - start) / (Date.UTC(year + 1, 0, 1) - start);
}
