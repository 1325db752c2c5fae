/** May these two surveys be compared, and what of them? The verdict comes before any number. */

import type { Reason } from '../../survey/message.ts';
import type { StationWithTransects, SurveyInHand } from '../../survey/observation.ts';
import { methodUsed } from '../status/count-method.ts';

export type Aspect =
  | 'method'
  | 'belt width'
  | 'searched area'
  | 'depth'
  | 'season'
  | 'mode'
  | 'observers'
  | 'strata'
  | 'species'
  | 'selection';

export interface ComparedAspect {
  readonly aspect: Aspect;
  /** held: not comparable, unless somebody answers for it by name. */
  readonly verdict: 'same' | 'limited' | 'held' | 'not known';
  readonly reason: Reason | null;
}

export interface Comparability {
  readonly verdict: 'same' | 'limited' | 'held';
  readonly aspects: readonly ComparedAspect[];
}

/** Differences beyond these are told; common practice, not a published rule. */
const depthDifferenceM = 3;
const seasonDifferenceDays = 61;
const areaDifference = 0.1;

export function comparabilityOf(from: SurveyInHand, to: SurveyInHand): Comparability {
  const aspects = [
    methods(from, to),
    beltWidths(from, to),
    searchedAreas(from, to),
    depths(from, to),
    seasons(from, to),
    modes(from, to),
    observers(from, to),
    strata(from, to),
    species(from, to),
    selections(from, to),
  ];
  const has = (verdict: ComparedAspect['verdict']) => aspects.some((one) => one.verdict === verdict);
  return { verdict: has('held') ? 'held' : has('limited') ? 'limited' : 'same', aspects };
}

function same(aspect: Aspect): ComparedAspect {
  return { aspect, verdict: 'same', reason: null };
}

function notKnown(aspect: Aspect): ComparedAspect {
  return { aspect, verdict: 'not known', reason: { code: 'change-not-on-record', parameters: { aspect } } };
}

function limited(aspect: Aspect, reason: Reason): ComparedAspect {
  return { aspect, verdict: 'limited', reason };
}

/** Night finds other animals than day, a timed search or a tow other ones than a belt: no factor turns one into the other. */
function methods(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [methodUsed(from).methods, methodUsed(to).methods];
  if (a.length === 1 && b.length === 1 && a[0] === b[0]) return same('method');
  const parameters = { from: a.join(', '), to: b.join(', ') };
  return { aspect: 'method', verdict: 'held', reason: { code: 'change-other-method', parameters } };
}

function beltWidths(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [methodUsed(from).beltWidthsM, methodUsed(to).beltWidthsM];
  if (a.length === 0 || b.length === 0) return notKnown('belt width');
  if (a.join() === b.join()) return same('belt width');
  const parameters = { fromM: a.join(' and '), toM: b.join(' and ') };
  return limited('belt width', { code: 'change-other-width', parameters });
}

function searchedAreas(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [from.plannedAreaCm2, to.plannedAreaCm2];
  if (a === null || b === null) return notKnown('searched area');
  if (Math.abs(b / a - 1) <= areaDifference) return same('searched area');
  const parameters = { fromM2: a / 10_000, toM2: b / 10_000 };
  return limited('searched area', { code: 'change-other-area', parameters });
}

function depths(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [middleDepthM(from), middleDepthM(to)];
  if (a === null || b === null) return notKnown('depth');
  if (Math.abs(a - b) <= depthDifferenceM) return same('depth');
  return limited('depth', { code: 'change-other-depth', parameters: { fromM: a, toM: b } });
}

function middleDepthM({ stations }: SurveyInHand): number | null {
  const depthsM = stations.flatMap(({ record }) => (record.depthM === null ? [] : [record.depthM]));
  return 2 * depthsM.length < stations.length ? null : middleOf(depthsM);
}

function middleOf(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = values.toSorted((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return (sorted[Math.floor(half)]! + sorted[Math.ceil(half)]!) / 2;
}

function seasons(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [middleDay(from), middleDay(to)];
  if (a === null || b === null) return notKnown('season');
  const apart = Math.abs(a - b) % 365;
  if (Math.min(apart, 365 - apart) <= seasonDifferenceDays) return same('season');
  return limited('season', {
    code: 'change-other-season',
    parameters: { from: spanOf(from), to: spanOf(to) },
  });
}

/** Day of the year in the middle of the survey, 1 to 366. */
function middleDay({ stations }: SurveyInHand): number | null {
  return middleOf(
    stations.map(({ record }) => {
      const day = Date.parse(`${record.date}T00:00:00Z`);
      return (day - Date.parse(`${record.date.slice(0, 4)}-01-01T00:00:00Z`)) / 86_400_000 + 1;
    }),
  );
}

function spanOf({ stations }: SurveyInHand): string {
  const dates = stations.map(({ record }) => record.date).toSorted();
  return `${dates[0]} – ${dates.at(-1)}`;
}

function modes(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [namesOf(from, (one) => one.record.mode), namesOf(to, (one) => one.record.mode)];
  if (a.length === 0 || b.length === 0) return notKnown('mode');
  if (a.join() === b.join()) return same('mode');
  return limited('mode', { code: 'change-other-mode', parameters: { from: a.join(', '), to: b.join(', ') } });
}

function observers(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [namesOf(from, (one) => one.record.recorder), namesOf(to, (one) => one.record.recorder)];
  if (a.length === 0 || b.length === 0) return notKnown('observers');
  if (a.some((one) => b.includes(one))) return same('observers');
  const parameters = { from: a.join(', '), to: b.join(', ') };
  return limited('observers', { code: 'change-other-observers', parameters });
}

function strata(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [namesOf(from, (one) => one.stratum.name), namesOf(to, (one) => one.stratum.name)];
  const dropped = [...a.filter((one) => !b.includes(one)), ...b.filter((one) => !a.includes(one))];
  if (dropped.length === 0) return same('strata');
  const common = a.filter((one) => b.includes(one));
  if (common.length === 0) {
    const parameters = { from: a.join(', '), to: b.join(', ') };
    return { aspect: 'strata', verdict: 'held', reason: { code: 'change-no-common-stratum', parameters } };
  }
  const parameters = { dropped: dropped.join(', '), common: common.join(', ') };
  return limited('strata', { code: 'change-strata-dropped', parameters });
}

function species(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const [a, b] = [from, to].map((survey) => survey.targets.map((one) => one.name));
  const dropped = [...a!.filter((one) => !b!.includes(one)), ...b!.filter((one) => !a!.includes(one))];
  if (dropped.length === 0) return same('species');
  return limited('species', { code: 'change-species-dropped', parameters: { species: dropped.join(', ') } });
}

function selections(from: SurveyInHand, to: SurveyInHand): ComparedAspect {
  const handPicked = [...from.stations, ...to.stations].filter(isHandPicked).length;
  if (handPicked > 0) {
    return limited('selection', { code: 'change-hand-picked', parameters: { stations: handPicked } });
  }
  const unknown = [...from.stations, ...to.stations].filter((one) => one.record.selection === null).length;
  return unknown === 0 ? same('selection') : notKnown('selection');
}

export function isHandPicked(station: StationWithTransects): boolean {
  return station.record.selection === 'hand-picked';
}

function namesOf(survey: SurveyInHand, name: (station: StationWithTransects) => string | null): string[] {
  const names = survey.stations.map(name).filter((one) => one !== null);
  return [...new Set(names)].toSorted();
}
