/** Where one figure comes from: the answer of its own verb, and every station and belt behind it. */

import type { DensityAnswer, ScopeKind } from '../estimates/answers.ts';
import { chooseWeights, type WeightsChosen } from '../estimates/biomass/choose-weights.ts';
import { estimateBiomass } from '../estimates/biomass/estimate-biomass.ts';
import { Archive } from '../estimates/density/archive.ts';
import { DensityEstimator } from '../estimates/density/density-estimator.ts';
import { type Acceptance, defaultDensitySettings } from '../estimates/density/density-settings.ts';
import { explainFigure } from '../estimates/explain/explain-figure.ts';
import type { ExplainedFigure, Explanation } from '../estimates/explain/explanation.ts';
import { estimateSizes } from '../estimates/sizes/estimate-sizes.ts';
import { Failure } from '../survey/failure.ts';
import type { Problem, Reason } from '../survey/message.ts';
import { nearestName } from '../survey/nearest-name.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { askedOf } from './check-survey.ts';
import { hasLengths } from './harvest/has-lengths.ts';
import { latestAsked, openUpTo } from './open-up-to.ts';
import { readBookWords, speciesAsked } from './take-in-hand.ts';

export interface ExplainRequest {
  /** Null for the latest survey of the book. */
  readonly survey: string | null;
  readonly species: string;
  readonly of: ExplainedFigure;
  /** Null name for the whole survey. */
  readonly scope: { readonly by: ScopeKind; readonly name: string | null };
  readonly confidence: number;
  readonly acceptance: Acceptance | null;
}

export interface ExplainResult {
  readonly explanation: Explanation;
  readonly problems: readonly Problem[];
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

export async function explain(store: Store, request: ExplainRequest): Promise<ExplainResult> {
  const words = await readBookWords(store);
  const survey = latestAsked(words, request.survey);
  const species = speciesAsked(words, request.species);
  const { by } = request.scope;
  const { confidence, acceptance, of } = request;
  const estimator = new DensityEstimator({ ...defaultDensitySettings, by, confidence, acceptance });
  const archive = new Archive();
  const opened = await openUpTo(store, words, survey, {
    remember: (earlier: SurveyInHand) => {
      estimator.remember(earlier);
      archive.remember(earlier);
    },
  });
  const { inHand } = opened;
  const density = densityAsked(estimator.answers(inHand, species), request);
  const isNamed = (one: { readonly scope: { readonly name: string } }) =>
    one.scope.name === density.scope.name;
  const sizes =
    of === 'size'
      ? (estimateSizes(inHand, species, { by, limitMm: null, classMm: 20, confidence }).find(isNamed) ?? null)
      : null;
  const weights = of === 'biomass' ? await weightsFor(store, { inHand, species, acceptance }) : null;
  const biomass =
    weights === null
      ? null
      : (estimateBiomass(
          { survey: inHand, species, densities: [density], choose: () => weights, state: 'live' },
          { by, confidence, acceptance },
        )[0] ?? null);
  return {
    explanation: explainFigure({
      survey: inHand,
      species,
      of,
      density,
      sizes,
      biomass,
      weights,
      archive,
      confidence,
    }),
    problems: askedOf(opened),
    species: words.species,
    dataVersion: await store.dataVersion(),
  };
}

/** A scope that is not there is a slip of the pen. */
function densityAsked(answers: readonly DensityAnswer[], { scope }: ExplainRequest): DensityAnswer {
  const found = scope.name === null ? answers[0] : answers.find((one) => one.scope.name === scope.name);
  if (found !== undefined) return found;
  const known = answers.map((one) => one.scope.name);
  const name = scope.name ?? '';
  throw new Failure('unknown-scope-name', {
    scope: scope.by,
    name,
    nearest: nearestName(name, known) ?? '',
    known: known.slice(0, 12).join(', '),
  });
}

async function weightsFor(
  store: Store,
  {
    inHand,
    species,
    acceptance,
  }: { readonly inHand: SurveyInHand; readonly species: Species; readonly acceptance: Acceptance | null },
): Promise<WeightsChosen | Reason> {
  return chooseWeights({
    species,
    ownValues: await store.all('ownValue'),
    weighings: (await store.all('weight')).filter((one) => one.speciesId === species.id),
    choice: 'auto',
    state: null,
    correction: 'normal',
    hasLengths: hasLengths(inHand, species),
    acceptance,
  });
}
