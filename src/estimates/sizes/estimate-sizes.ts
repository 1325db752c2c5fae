/** Sizes of one species in one survey, scope by scope: lengths raised to the counts, stations as clusters. */

import type { Reason } from '../../survey/message.ts';
import {
  classifyTransect,
  observeSpecies,
  type StationObservation,
  type SurveyInHand,
} from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { ScopeKind, SizesAnswer } from '../answers.ts';
import { membersOf } from '../density/holds.ts';
import { type ScopeInHand, type ScopePart, scopesBy } from '../density/scopes.ts';
import { stratumSamples } from '../density/stratum-sample.ts';
import {
  classEdgesMm,
  raisedClasses,
  raisedMeanLengthMm,
  raisedQuantilesMm,
  raisedShareAtLeast,
} from '../raised-length-estimates.ts';
import { type LengthStratum, type LengthTally, type RaisedLengths, raiseLengths } from '../raised-lengths.ts';

export interface SizesSettings {
  readonly by: ScopeKind;
  /** Null where no limit is known: then no share is given. */
  readonly limitMm: number | null;
  readonly classMm: number;
  readonly confidence: number;
}

export function estimateSizes(
  survey: SurveyInHand,
  species: Species,
  settings: SizesSettings,
): readonly SizesAnswer[] {
  const samples = stratumSamples(observeSpecies(survey, species), survey.plannedAreaCm2, {
    estimator: 'auto',
    selection: 'all',
  });
  return scopesBy(settings.by, survey.survey.name, samples).map((scope) =>
    sizesOf(scope, { survey, species, settings }),
  );
}

interface SizesContext {
  readonly survey: SurveyInHand;
  readonly species: Species;
  readonly settings: SizesSettings;
}

function sizesOf(scope: ScopeInHand, { survey, species, settings }: SizesContext): SizesAnswer {
  const members = membersOf(scope.parts).map((one) => one.observation);
  const tallies = members.flatMap((one) => talliesOf(one, species));
  const counted = {
    survey: survey.survey.name,
    species: species.name,
    scope: scope.scope,
    animals: tallies.reduce((total, tally) => total + tally.count, 0),
    measured: tallies.reduce(
      (total, tally) => total + tally.lengths.reduce((n, length) => n + length.n, 0),
      0,
    ),
  };
  const raised = raiseScope(scope, species);
  if (!('strata' in raised)) return { ...counted, ...nothing, reason: raised };
  const numbers = numbersOf(raised, settings);
  const withLengths = raised.strata.flatMap((stratum) =>
    stratum.stations.filter((lengths) => lengths.length > 0),
  );
  return withLengths.length > 1 ? { ...counted, ...numbers } : { ...counted, ...withoutSpread(numbers) };
}

/** All lengths from one station: between stations there is nothing to compare, and 0 would be a lie. */
function withoutSpread(numbers: ReturnType<typeof numbersOf>): ReturnType<typeof numbersOf> {
  const { shareAtLeast } = numbers;
  return {
    ...numbers,
    standardErrorMm: null,
    shareAtLeast: shareAtLeast === null ? null : { ...shareAtLeast, standardError: null, interval: null },
    reason: { code: 'lengths-from-one-station', parameters: {} },
  };
}

type Counted = Pick<SizesAnswer, 'survey' | 'species' | 'scope' | 'animals' | 'measured'>;

const nothing = {
  meanLengthMm: null,
  standardErrorMm: null,
  shareAtLeast: null,
  quantilesMm: null,
  classes: [],
  borrowedAnimals: 0,
} as const;

/** The raised lengths of the scope, or why there are none. */
export function raiseScope(scope: ScopeInHand, species: Species): RaisedLengths | Reason {
  const parts = scope.parts.filter(({ isMember }) => isMember.some(Boolean));
  const withoutArea = parts.filter(({ sample }) => sample.stratum.areaHa === null);
  if (parts.length === 0) return { code: 'no-searched-area', parameters: { where: scope.scope.name } };
  if (withoutArea.length > 0 && parts.length > 1) {
    const strata = withoutArea.map(({ sample }) => sample.stratum.name).join(', ');
    return { code: 'stratum-without-area', parameters: { strata } };
  }
  const raised = raiseLengths(parts.map((part) => lengthStratum(part, species)));
  return raised ?? { code: 'none-measured', parameters: { species: species.name } };
}

/** All searched stations of the stratum stay, those outside the scope with nothing in them. */
function lengthStratum({ sample, isMember }: ScopePart, species: Species): LengthStratum {
  return {
    name: sample.stratum.name,
    weight: sample.stratum.areaHa ?? 1,
    stations: sample.observed.map((observation, i) => ({
      searchedAreaM2: observation.searchedAreaCm2 / 10_000,
      tallies: isMember[i] ? talliesOf(observation, species) : [],
    })),
  };
}

/** Only transects that count for the density count for the sizes. */
function talliesOf(observation: StationObservation, species: Species): readonly LengthTally[] {
  return observation.station.transects
    .filter((transect) => classifyTransect(transect, species) === 'counted')
    .map((transect) => transect.tallies.get(species.id)!);
}

function numbersOf(raised: RaisedLengths, settings: SizesSettings): Omit<SizesAnswer, keyof Counted> {
  const mean = raisedMeanLengthMm(raised);
  const [p10, p25, p50, p75, p90] = raisedQuantilesMm(raised, [0.1, 0.25, 0.5, 0.75, 0.9]);
  const classes = raisedClasses(raised, classEdgesMm(raised, settings.classMm));
  return {
    meanLengthMm: mean.value,
    standardErrorMm: mean.standardError,
    shareAtLeast: shareOf(raised, settings),
    quantilesMm: { p10: p10!, p25: p25!, p50: p50!, p75: p75!, p90: p90! },
    classes: classes.map(({ fromMm, toMm, share, animals }) => ({ fromMm, toMm, share, animals })),
    borrowedAnimals: raised.borrowedAnimals,
    reason: mean.reason,
  };
}

function shareOf(raised: RaisedLengths, { limitMm, confidence }: SizesSettings): SizesAnswer['shareAtLeast'] {
  if (limitMm === null) return null;
  const share = raisedShareAtLeast(raised, limitMm, confidence);
  return { limitMm, share: share.value ?? 0, standardError: share.standardError, interval: share.interval };
}
