/** Change of one species between two surveys, scope by scope. The formulas live in their own files. */

import { normalQuantile, tCdf } from '../../maths/distributions.ts';
import { seededRandom } from '../../maths/random.ts';
import type { Reason } from '../../survey/message.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { Scope } from '../answers.ts';
import type { ClumpedIntervals } from '../clumped/clumped-intervals.ts';
import { blankLeftOut } from './blank-left-out.ts';
import type { ChangeAnswer, Told } from './change-answer.ts';
import { clumpedRatio, type RatioBelief } from './clumped-ratio.ts';
import { type CommonStratum, type ComparedStation, commonPart, type Pairing } from './common-part.ts';
import { permutationTest } from './permutation-test.ts';
import { placeCorrelation } from './place-correlation.ts';
import { type ChangeOfMeans, changeOfMeans } from './two-means.ts';

export interface ChangeSettings {
  readonly by: 'survey' | 'stratum' | 'zone';
  readonly pairing: Pairing;
  /** clumped: keeps its promise for clumped animals; log-ratio: by design, and too sure when they are (see the coverage). */
  readonly interval: 'clumped' | 'log-ratio';
  readonly confidence: number;
  readonly seed: number;
  /** Draws from the belief about the ratio. */
  readonly draws: number;
  /** Random arrangements where not all can be tried. */
  readonly permutations: number;
  /** Somebody answers for stations that wait for an answer. */
  readonly accepted: boolean;
}

export interface TwoSurveys {
  readonly from: SurveyInHand;
  readonly to: SurveyInHand;
  readonly species: Species;
  readonly intervals: ClumpedIntervals;
}

/** The sum of two strata needs their hectares; a part of one stratum does not. */
export function estimateChange(two: TwoSurveys, settings: ChangeSettings): readonly ChangeAnswer[] {
  const common = commonPart(two, settings.pairing);
  const blank = blankAnswer(two, common);
  const hold = common.reason?.code === 'unresolved-stations' && settings.accepted ? null : common.reason;
  if (hold !== null) return [{ ...blank, reason: hold }];
  const cautions = [...blank.cautions, ...blankLeftOut(common.unresolved)];
  return scopesOf(weighted(common), two, settings.by).map(({ scope, strata }) =>
    answerScope({ ...blank, cautions, scope, strata: strata.map((one) => one.name) }, strata, two, settings),
  );
}

/** A species that is not compared, with the reason. */
export function notCompared(two: Omit<TwoSurveys, 'intervals'>, reason: Reason): ChangeAnswer {
  return { ...blankAnswer(two, { atTheseStations: false, cautions: [] }), reason };
}

function blankAnswer(
  { from, to, species }: Omit<TwoSurveys, 'intervals'>,
  common: Pick<ReturnType<typeof commonPart>, 'atTheseStations' | 'cautions'>,
): ChangeAnswer {
  return {
    from: from.survey.name,
    to: to.survey.name,
    species: species.name,
    scope: { by: 'survey', name: to.survey.name },
    strata: [],
    atTheseStations: common.atTheseStations,
    stations: { from: 0, to: 0 },
    animals: { from: 0, to: 0 },
    pairs: 0,
    densityPerHa: null,
    ratio: null,
    percent: null,
    ratioInterval: null,
    told: null,
    beliefLower: null,
    smallestFallTo: null,
    stationsMoreForHalving: null,
    neverTold: false,
    stationsEachForHalving: null,
    difference: null,
    logRatio: null,
    permutation: null,
    falseAlarmByDesign: null,
    belief: null,
    reason: null,
    cautions: common.cautions,
  };
}

interface ScopeToCompare {
  readonly scope: Scope;
  readonly strata: readonly WeightedStratum[];
}

interface WeightedStratum extends CommonStratum {
  readonly weight: number | null;
}

/** Strata weigh by their hectares; hand-picked stations speak for themselves alone, and each counts alike. */
function weighted({ strata, atTheseStations }: ReturnType<typeof commonPart>): readonly WeightedStratum[] {
  return strata.map((one) => ({ ...one, weight: atTheseStations ? one.to.length : one.areaHa }));
}

function scopesOf(
  strata: readonly WeightedStratum[],
  { to }: TwoSurveys,
  by: ChangeSettings['by'],
): readonly ScopeToCompare[] {
  if (by === 'survey') return [{ scope: { by, name: to.survey.name }, strata }];
  if (by === 'stratum') return strata.map((one) => ({ scope: { by, name: one.name }, strata: [one] }));
  const zones = new Set(
    strata.flatMap((one) => [...one.from, ...one.to].flatMap((station) => zoneOf(station) ?? [])),
  );
  return [...zones].toSorted().map((zone) => ({
    scope: { by, name: zone },
    strata: strata.flatMap((one) => inZone(one, zone)),
  }));
}

function zoneOf({ observation }: ComparedStation): string | null {
  return observation.station.record.zone;
}

/** A zone holds of a stratum what its stations hold, on average of both surveys: the same weight in both. */
function inZone(stratum: WeightedStratum, zone: string): WeightedStratum[] {
  const [from, to] = [stratum.from, stratum.to].map((list) => list.filter((one) => zoneOf(one) === zone));
  if (from!.length === 0 || to!.length === 0) return [];
  const share = (from!.length / stratum.from.length + to!.length / stratum.to.length) / 2;
  const weight = stratum.weight === null ? null : stratum.weight * share;
  return [{ ...stratum, from: from!, to: to!, weight }];
}

function answerScope(
  blank: ChangeAnswer,
  strata: readonly WeightedStratum[],
  two: TwoSurveys,
  settings: ChangeSettings,
): ChangeAnswer {
  const counted = { ...blank, ...countedIn(strata) };
  const reason = unknowable(strata, blank);
  if (reason !== null) return { ...counted, reason };
  const values = strata.map((one) => ({
    name: one.name,
    // A single stratum weighs one, whatever its hectares.
    weight: strata.length === 1 ? 1 : one.weight!,
    from: one.from.map(({ place, valuePerHa }) => ({ place, valuePerHa })),
    to: one.to.map(({ place, valuePerHa }) => ({ place, valuePerHa })),
  }));
  const means = changeOfMeans(values, settings.confidence);
  if (counted.animals.from === 0 && counted.animals.to === 0) {
    return { ...counted, reason: { code: 'change-none-seen', parameters: { species: two.species.name } } };
  }
  const random = seededRandom(settings.seed);
  const compared = {
    ...counted,
    pairs: means.pairs,
    densityPerHa: { from: means.fromPerHa, to: means.toPerHa },
    difference: means.difference,
    logRatio: means.logRatio,
  };
  const permutation = () => permutationTest(values, { random, draws: settings.permutations });
  // A stratum without a spread would leave the belief to its prior alone: the upper end runs to where the grid was cut.
  if (means.reason !== null) {
    return { ...compared, ...ratioOf(means), permutation: permutation(), reason: means.reason };
  }
  const belief = clumpedRatio(countsOf(strata), two.intervals, { random, draws: settings.draws });
  const isThin = settings.interval === 'clumped' && isThinlySpread(strata, settings.by, means);
  const told = toldBy(belief, means, counted, isThin ? { ...settings, interval: 'log-ratio' } : settings);
  return {
    ...compared,
    ...told,
    ...(isThin
      ? {
          ...whatDesignTakes(means, counted.stations, settings.confidence),
          told: atMostProbable(told.told),
          belief: null,
        }
      : {}),
    permutation: permutation(),
    cautions: isThin
      ? [...counted.cautions, { code: 'change-too-few-for-clumped', parameters: {} }]
      : counted.cautions,
  };
}

/** Fewest stations of a stratum, in each survey, from which the clumped-count model learns; as for a zone's density. */
const fewestMembers = 3;

/** Part of a stratum in a zone is often one or two stations: where the design has an interval, it stands. */
function isThinlySpread(
  strata: readonly WeightedStratum[],
  by: ChangeSettings['by'],
  means: ChangeOfMeans,
): boolean {
  if (by !== 'zone' || byDesign(means) === null) return false;
  return strata.some(({ from, to }) => Math.min(from.length, to.length) < fewestMembers);
}

function ratioOf({ fromPerHa, toPerHa }: ChangeOfMeans) {
  const ratio = fromPerHa === 0 ? null : toPerHa / fromPerHa;
  return { ratio, percent: ratio === null ? null : 100 * (ratio - 1) };
}

function unknowable(strata: readonly WeightedStratum[], { scope }: ChangeAnswer): Reason | null {
  if (strata.length === 0) return { code: 'no-station', parameters: { where: scope.name } };
  const withoutArea = strata.filter((one) => one.weight === null).map((one) => one.name);
  if (strata.length === 1 || withoutArea.length === 0) return null;
  return { code: 'stratum-without-area', parameters: { strata: withoutArea.join(', ') } };
}

function countedIn(strata: readonly CommonStratum[]) {
  const all = (side: 'from' | 'to') => strata.flatMap((one) => one[side]);
  const animals = (side: 'from' | 'to') =>
    all(side).reduce((total, { observation }) => total + observation.animals, 0);
  return {
    stations: { from: all('from').length, to: all('to').length },
    animals: { from: animals('from'), to: animals('to') },
  };
}

function countsOf(strata: readonly WeightedStratum[]) {
  const count = ({ observation }: ComparedStation) => ({
    animals: observation.animals,
    areaM2: observation.searchedAreaCm2 / 10_000,
  });
  return strata.map((one) => ({
    weight: strata.length === 1 ? 1 : one.weight!,
    from: one.from.map(count),
    to: one.to.map(count),
    correlation: placeCorrelation(pairsOf(one), { from: one.from.length, to: one.to.length }),
  }));
}

function pairsOf({ from, to }: CommonStratum) {
  const later = new Map(to.map((one) => [one.place, one.observation.animals]));
  return from.flatMap((one) => {
    const animals = one.place === null ? undefined : later.get(one.place);
    return animals === undefined ? [] : [[one.observation.animals, animals] as const];
  });
}

/** Share of the belief above which a change is called probable. METHODS k's class, a proposal and no standard. */
const probable = 0.9;
const power = 0.8;

function toldBy(
  belief: RatioBelief,
  means: ChangeOfMeans,
  counted: Pick<ChangeAnswer, 'stations' | 'animals'>,
  { confidence, interval }: ChangeSettings,
) {
  const design = interval === 'log-ratio' ? byDesign(means) : null;
  const [low, high] = design?.interval ?? belief.interval(confidence);
  const isOpen = counted.animals.from === 0;
  const { ratio, percent } = ratioOf(means);
  const none = counted.animals.to === 0;
  // The design-based ratio lies inside its interval, as the estimate does everywhere in this house.
  const inside = { low: Math.min(low, ratio ?? low), high: Math.max(high, ratio ?? high) };
  const beliefLower = design?.lower ?? belief.below(1);
  return {
    ratio,
    percent,
    ratioInterval: [none ? 0 : inside.low, isOpen ? null : inside.high] as const,
    told: toldInOneWord(inside, beliefLower),
    beliefLower,
    ...(isOpen || none ? {} : whatItTakes(belief, counted.stations, confidence)),
    belief: isOpen || none ? null : bandOf(belief),
  };
}

/** The interval of the log ratio and the confidence that it is below zero; null where there is none. */
function byDesign({ logRatio }: ChangeOfMeans) {
  const { interval, standardError, degreesOfFreedom, value } = logRatio ?? {};
  if (!interval || !standardError || !degreesOfFreedom || value === undefined) return null;
  return {
    interval: [Math.exp(interval[0]), Math.exp(interval[1])] as const,
    lower: tCdf(-value / standardError, degreesOfFreedom),
  };
}

/** The interval of the log ratio cries wolf where animals are clumped and stations few: it proves nothing there. */
function atMostProbable(told: Told): Told {
  if (told === 'lower') return 'probably lower';
  return told === 'higher' ? 'probably higher' : told;
}

function toldInOneWord({ low, high }: { low: number; high: number }, beliefLower: number): Told {
  if (high < 1) return 'lower';
  if (low > 1) return 'higher';
  if (beliefLower >= probable) return 'probably lower';
  return beliefLower <= 1 - probable ? 'probably higher' : 'cannot tell';
}

/** From the width of the belief: what surveys like these could have told, and how many stations a halving would take. */
function whatItTakes(belief: RatioBelief, stations: ChangeAnswer['stations'], confidence: number) {
  // Half the middle 68 %: one standard deviation of the logarithm, without the far tails.
  const sdLog = Math.log(belief.quantile(0.8413) / belief.quantile(0.1587)) / 2;
  return whatSpreadTakes(sdLog, stations, confidence);
}

/** The same from the standard error of the log ratio. */
function whatDesignTakes(
  { logRatio }: ChangeOfMeans,
  stations: ChangeAnswer['stations'],
  confidence: number,
) {
  return whatSpreadTakes(logRatio!.standardError!, stations, confidence);
}

function whatSpreadTakes(sdLog: number, stations: ChangeAnswer['stations'], confidence: number) {
  const reach = normalQuantile((1 + confidence) / 2) + normalQuantile(power);
  const wanted = (Math.LN2 / reach) ** 2;
  // Equal clumping: the uncertainty is shared out by the stations; more of them mend only the later survey's part.
  const shareTo = stations.from / (stations.from + stations.to);
  const left = wanted - sdLog ** 2 * (1 - shareTo);
  const needed = left <= 0 ? null : Math.ceil((stations.to * sdLog ** 2 * shareTo) / left);
  return {
    smallestFallTo: Math.exp(-reach * sdLog),
    stationsMoreForHalving: needed === null ? null : Math.max(0, needed - stations.to),
    neverTold: needed === null,
    stationsEachForHalving: Math.ceil(((sdLog ** 2 / wanted) * 2) / (1 / stations.from + 1 / stations.to)),
  };
}

const bandPoints = 80;

/** The middle 99.8 % of the belief at ratios of equal step, as a smoothed density of the draws. */
function bandOf(belief: RatioBelief) {
  const low = Math.log(belief.quantile(0.001));
  const high = Math.log(belief.quantile(0.999));
  const step = (high - low) / (bandPoints - 1);
  const logs = Array.from({ length: bandPoints }, (_, i) => low + i * step);
  const weights = logs.map(
    (log) => belief.below(Math.exp(log + 1.5 * step)) - belief.below(Math.exp(log - 1.5 * step)),
  );
  const greatest = Math.max(...weights);
  return { ratio: logs.map(Math.exp), weight: weights.map((weight) => weight / greatest) };
}
