/** Answers as the screens receive them: numbers unrounded, reasons as sentences in the reader's language. */

import type { DensityAnswer, SizesAnswer } from '../../estimates/answers.ts';
import { type Language, problemWithoutPlace, sentence } from '../../report/catalogue/sentence.ts';
import { inPeoplesWords, type SpeciesName } from '../../report/species-names.ts';
import type { Answer } from '../../survey/words.ts';
import type { CheckedProblem } from '../check-survey.ts';
import type { DensityRow, GivenAnswer, ProblemRow, SizesRow } from './answer-schemas.ts';

/** What a reader calls a species, and in which language the reasons are told. */
export interface Reader {
  readonly nameOf: (species: string) => SpeciesName;
  readonly language: Language;
}

export function densityRow(answer: DensityAnswer, { nameOf, language }: Reader): DensityRow {
  const { reason, cautions, leftOut, belief, estimators, ...numbers } = answer;
  const { densityPerHa, standardErrorPerHa } = answer;
  const hasSpread = densityPerHa !== null && densityPerHa > 0 && standardErrorPerHa !== null;
  return {
    ...numbers,
    name: nameOf(answer.species).label,
    intervalPerHa: pair(numbers.intervalPerHa),
    totalInterval: pair(numbers.totalInterval),
    prevalenceInterval: pair(numbers.prevalenceInterval),
    coefficientOfVariationPercent: hasSpread ? (100 * standardErrorPerHa) / densityPerHa : null,
    estimators: [...estimators],
    belief: belief === null ? null : { densityPerHa: [...belief.densityPerHa], weight: [...belief.weight] },
    reason: reason === null ? null : sentence(language, inPeoplesWords(reason, nameOf)),
    reasonCode: reason?.code ?? null,
    cautions: cautions.map((caution) => sentence(language, inPeoplesWords(caution, nameOf))),
    leftOut: leftOut.map((one) => ({
      ...one,
      reason: sentence(language, inPeoplesWords(one.reason, nameOf)),
    })),
  };
}

export function sizesRow(answer: SizesAnswer, { nameOf, language }: Reader): SizesRow {
  const { reason, shareAtLeast, quantilesMm, classes, ...numbers } = answer;
  return {
    ...numbers,
    name: nameOf(answer.species).label,
    shareAtLeast: shareAtLeast && { ...shareAtLeast, interval: pair(shareAtLeast.interval) },
    quantilesMm: quantilesMm && { ...quantilesMm },
    classes: [...classes],
    reason: reason === null ? null : sentence(language, inPeoplesWords(reason, nameOf)),
  };
}

/** `stationIds`: from the code of a station to its identity, within the one survey. */
export function problemRow(
  { problem, answer }: CheckedProblem,
  stationIds: ReadonlyMap<string, string>,
  language: Language,
): ProblemRow {
  const { code, severity, place, value, suggestion } = problem;
  return {
    code,
    severity,
    message: problemWithoutPlace(language, problem),
    station: place.station ?? null,
    transect: place.transect ?? null,
    swim: place.swim ?? null,
    species: place.species ?? null,
    value,
    suggestion,
    stationId: stationIds.get(place.station ?? '') ?? null,
    answer: answer && givenAnswer(answer),
  };
}

export function givenAnswer({ answer, who, why, answeredAt: at }: Answer): GivenAnswer {
  return { answer, who, why, at };
}

function pair(interval: readonly [number, number] | null): [number, number] | null {
  return interval === null ? null : [interval[0], interval[1]];
}
