/** A problem as a sentence from one language's catalogue; a screen loads the catalogue of its own language alone. */

import type { FailureCode } from '../../survey/failure.ts';
import type { Place, Problem } from '../../survey/message.ts';
import type { ProblemCode } from '../../survey/problem-codes.ts';
import type { ReasonCode } from '../../survey/reason-codes.ts';
import { formatShort } from '../numbers.ts';
import { fillSentence } from './fill.ts';
import type { Language } from './language.ts';

export interface ProblemCatalogue {
  readonly language: Language;
  readonly problems: Readonly<Record<ProblemCode, string>>;
  /** What stands in an empty slot; the usual English words where none is given. */
  readonly notGiven?: string;
  /** A word that the program itself puts into a slot, in this language; English where there is none. */
  readonly parameter?: (code: ProblemCode | ReasonCode | FailureCode, slot: string, text: string) => string;
}

/** A problem where its place stands in a column of its own. */
export function problemSentence(catalogue: ProblemCatalogue, problem: Problem): string {
  const { code, place, parameters, value, suggestion } = problem;
  const words = {
    ...slotsInWords(catalogue, code, placeParameters(place)),
    ...slotsInWords(catalogue, code, parameters),
    ...slotsInWords(catalogue, code, present({ value, suggestion })),
  };
  return fillSentence(catalogue.problems[code], words, catalogue.notGiven);
}

export function slotsInWords(
  { language, parameter }: Pick<ProblemCatalogue, 'language' | 'parameter'>,
  code: ProblemCode | ReasonCode | FailureCode,
  parameters: Readonly<Record<string, string | number>>,
): Record<string, string> {
  const words: Record<string, string> = {};
  for (const [name, value] of Object.entries(parameters)) {
    if (value === '') continue; // an empty parameter is one that nobody could fill
    if (typeof value === 'string') words[name] = parameter?.(code, name, value) ?? value;
    else if (Number.isFinite(value)) words[name] = formatShort(value, language);
  }
  return words;
}

function placeParameters(place: Place): Record<string, string | number> {
  const { row, swim, ...rest } = place;
  return {
    ...present(rest),
    ...(row === undefined ? {} : { row: String(row) }),
    ...(swim === undefined ? {} : { swim: String(swim) }),
  };
}

function present(
  values: Readonly<Record<string, string | number | null | undefined>>,
): Record<string, string | number> {
  const kept: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(values)) {
    if (value !== null && value !== undefined && value !== '') kept[name] = value;
  }
  return kept;
}
