/** Status of one species in one survey: densities against references of the same method, and shares of sizes. */

import type { SurveyInHand } from '../../survey/observation.ts';
import type { ValueStatus } from '../../survey/value-words.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer, ScopeKind, SizesAnswer } from '../answers.ts';
import { estimateSizes } from '../sizes/estimate-sizes.ts';
import { compareDensity } from './compare-density.ts';
import { methodUsed } from './count-method.ts';
import type { ReferenceUsed, SizeShare, StatusAnswer } from './status-answer.ts';

/** A length to which the animals are held: size at maturity, or a limit of the book. */
export interface SizeMark {
  readonly lengthMm: number;
  readonly source: string;
  readonly status: ValueStatus;
}

export interface StatusInput {
  readonly survey: SurveyInHand;
  readonly species: Species;
  readonly densities: readonly DensityAnswer[];
  readonly references: readonly ReferenceUsed[];
  readonly maturity: readonly SizeMark[];
  readonly limit: SizeMark | null;
}

export interface StatusSettings {
  readonly by: Extract<ScopeKind, 'survey' | 'stratum' | 'zone'>;
  readonly confidence: number;
  readonly accepted: boolean;
}

/** One answer for each density, in its order. */
export function estimateStatus(input: StatusInput, settings: StatusSettings): readonly StatusAnswer[] {
  const { survey, densities, references, maturity, limit } = input;
  const used = methodUsed(survey);
  const ofMaturity = maturity.map((mark) => ({ mark, sizes: sizesByScope(input, mark, settings) }));
  const ofLimit = limit === null ? null : { mark: limit, sizes: sizesByScope(input, limit, settings) };
  const plain = ofLimit?.sizes ?? ofMaturity[0]?.sizes ?? sizesByScope(input, null, settings);
  return densities.map((density) => ({
    density,
    methods: used.methods,
    beltWidthsM: used.beltWidthsM,
    comparisons: references.map((reference) => compareDensity(density, used, reference, settings)),
    atMaturity: ofMaturity.map(({ mark, sizes }) => shareFor(mark, sizes.get(density.scope.name))),
    atLegalSize: ofLimit === null ? null : shareFor(ofLimit.mark, ofLimit.sizes.get(density.scope.name)),
    measured: plain.get(density.scope.name)?.measured ?? 0,
  }));
}

function sizesByScope(
  { survey, species }: StatusInput,
  mark: SizeMark | null,
  { by, confidence }: StatusSettings,
): ReadonlyMap<string, SizesAnswer> {
  const answers = estimateSizes(survey, species, {
    by,
    limitMm: mark?.lengthMm ?? null,
    classMm: 20,
    confidence,
  });
  return new Map(answers.map((answer) => [answer.scope.name, answer]));
}

function shareFor({ lengthMm, source, status }: SizeMark, sizes: SizesAnswer | undefined): SizeShare {
  const share = sizes?.shareAtLeast ?? null;
  return { limitMm: lengthMm, source, status, share, reason: sizes?.reason ?? null };
}
