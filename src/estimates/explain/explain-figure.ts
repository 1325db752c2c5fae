/** One figure opened to its roots: a density, a stock, a mean length or a biomass. */

import { sum } from '../../maths/variance.ts';
import type { Reason } from '../../survey/message.ts';
import { observeSpecies, type StationObservation, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer, SizesAnswer } from '../answers.ts';
import { lengthsByStation } from '../biomass/animals-with-weights.ts';
import type { BiomassAnswer } from '../biomass/biomass-answer.ts';
import type { WeightsChosen } from '../biomass/choose-weights.ts';
import { lengthWeightLine, weightOfLengthG } from '../biomass/length-weight-line.ts';
import type { Archive } from '../density/archive.ts';
import { defaultDensitySettings } from '../density/density-settings.ts';
import { type ScopeInHand, scopesBy } from '../density/scopes.ts';
import { type StratumSample, stratumSamples } from '../density/stratum-sample.ts';
import { raiseScope } from '../sizes/estimate-sizes.ts';
import { type AmountAt, explainStrata, withVariances } from './explain-strata.ts';
import type { ExplainedFigure, Explanation } from './explanation.ts';

export interface ExplainInput {
  readonly survey: SurveyInHand;
  readonly species: Species;
  readonly of: ExplainedFigure;
  /** The answer of the density verb for this scope. */
  readonly density: DensityAnswer;
  /** The answer of the sizes verb; asked for the size only. */
  readonly sizes: SizesAnswer | null;
  /** The answer of the biomass verb and its weights; asked for the biomass only. */
  readonly biomass: BiomassAnswer | null;
  readonly weights: WeightsChosen | Reason | null;
  readonly archive: Pick<Archive, 'intervalsFor'>;
  readonly confidence: number;
}

/** What the verb answers, with the stations behind it; where the verb gives no figure, its reason and the stations all the same. */
export function explainFigure(input: ExplainInput): Explanation {
  const { survey, species, of, density } = input;
  const samples = stratumSamples(
    observeSpecies(survey, species),
    survey.plannedAreaCm2,
    defaultDensitySettings,
  );
  const scope = scopesBy(density.scope.by, survey.survey.name, samples).find(
    (one) => one.scope.name === density.scope.name,
  );
  const figure = figureOf(input);
  const isWhole = density.scope.by === 'survey' || density.scope.by === 'stratum';
  const amounts = scope === undefined ? null : amountsOf(input, scope, samples);
  const bare = amounts === null || scope === undefined ? [] : explainStrata(scope, species, amounts);
  const perHa = figure.perHa;
  return {
    survey: survey.survey.name,
    species: species.name,
    scope: density.scope,
    of,
    ...figure.shown,
    confidence: input.confidence,
    areaHa: density.areaHa,
    isWhole,
    priors:
      density.intervalMethod === 'clumped' && of !== 'size'
        ? input.archive.intervalsFor(species, survey).priors
        : null,
    weights: input.weights !== null && 'basis' in input.weights ? input.weights : null,
    strata:
      perHa === null || figure.shown.standardError === null
        ? bare
        : withVariances(bare, { isWhole, value: perHa }),
    leftOut: density.leftOut,
    cautions: of === 'biomass' ? (input.biomass?.cautions ?? []) : of === 'size' ? [] : density.cautions,
  };
}

type Shown = Pick<
  Explanation,
  'unit' | 'value' | 'standardError' | 'degreesOfFreedom' | 'interval' | 'intervalMethod' | 'reason'
>;

interface Figure {
  readonly shown: Shown;
  /** The value that the stations add up to, before it is brought to the area. */
  readonly perHa: number | null;
}

function figureOf(input: ExplainInput): Figure {
  const { of, density } = input;
  if (of === 'size') return sizeFigure(input);
  if (of === 'biomass') return biomassFigure(input);
  const { degreesOfFreedom, intervalMethod, reason, densityPerHa } = density;
  const rest = { degreesOfFreedom, intervalMethod, reason };
  if (of === 'density') {
    const shown = {
      ...rest,
      unit: 'animals per ha',
      value: densityPerHa,
      standardError: density.standardErrorPerHa,
      interval: density.intervalPerHa,
    };
    return { shown, perHa: densityPerHa };
  }
  const shown = {
    ...rest,
    unit: 'animals',
    value: density.totalAnimals,
    standardError: density.totalStandardError,
    interval: density.totalInterval,
  };
  return { shown, perHa: densityPerHa };
}

function sizeFigure({ sizes, density }: ExplainInput): Figure {
  const value = sizes?.meanLengthMm ?? null;
  const shown = {
    unit: 'mm',
    value,
    standardError: sizes?.standardErrorMm ?? null,
    degreesOfFreedom: null,
    interval: null,
    intervalMethod: null,
    reason: sizes === null ? density.reason : sizes.reason,
  };
  return { shown, perHa: value };
}

function biomassFigure({ biomass, weights, density }: ExplainInput): Figure {
  const grams = biomass?.kgPerHa === null || biomass === null ? null : biomass.kgPerHa * 1000;
  const inG = (kg: number | null | undefined) => (kg === null || kg === undefined ? null : kg * 1000);
  const interval = biomass?.intervalKgPerHa ?? null;
  const missing = weights !== null && 'code' in weights ? weights : null;
  const shown: Shown = {
    unit: 'g per ha',
    value: grams,
    // Of the stations alone, since that is what the rows below add up to.
    standardError: inG(biomass?.samplingErrorKgPerHa),
    degreesOfFreedom: biomass?.degreesOfFreedom ?? null,
    interval: interval === null ? null : [interval[0] * 1000, interval[1] * 1000],
    intervalMethod: density.intervalMethod,
    reason: biomass?.reason ?? missing,
  };
  return { shown, perHa: grams };
}

function amountsOf(
  input: ExplainInput,
  scope: ScopeInHand,
  samples: readonly StratumSample[],
): AmountAt | null {
  if (input.of === 'size') return lengthSums(scope, input.species);
  if (input.of !== 'biomass') return { amount: (one) => one.animals, weightedAnimals: null };
  const { weights } = input;
  if (weights === null || !('basis' in weights)) return null;
  const grams = gramsAt(weights, samples, input.species);
  const ratio = weights.conversion?.content.ratio ?? 1;
  return grams === null ? null : { amount: (one) => grams(one) * ratio, weightedAnimals: null };
}

/** Weight of animals times length, and weight of animals, at each station of the raised lengths. */
function lengthSums(scope: ScopeInHand, species: Species): AmountAt | null {
  const raised = raiseScope(scope, species);
  if (!('strata' in raised)) return null;
  const parts = scope.parts.filter(({ isMember }) => isMember.some(Boolean));
  const byStation = new Map(
    parts.flatMap(({ sample }, h) =>
      sample.observed.map((one, i) => [one, raised.strata[h]!.stations[i]!] as const),
    ),
  );
  const at =
    (of: (length: { readonly lengthMm: number; readonly stock: number }) => number) =>
    (one: StationObservation) =>
      sum((byStation.get(one) ?? []).map(of));
  return { amount: at(({ lengthMm, stock }) => lengthMm * stock), weightedAnimals: at(({ stock }) => stock) };
}

function gramsAt(
  { basis }: WeightsChosen,
  samples: readonly StratumSample[],
  species: Species,
): ((observation: StationObservation) => number) | null {
  if (basis.by === 'mean weight') {
    const [only] = basis.means;
    return only === undefined || basis.means.length > 1 ? null : (one) => one.animals * only.weightG;
  }
  const lengths = lengthsByStation(samples, species);
  if (lengths === null) return null;
  const line = { ...lengthWeightLine(basis.pair), correction: basis.correction };
  return (one) =>
    sum(
      (lengths.get(one)?.lengths ?? []).map(
        ({ animals, lengthMm }) => animals * weightOfLengthG(line, lengthMm),
      ),
    );
}
