import type { Parameters, Place, Problem } from './message.ts';
import { type ProblemCode, problemSeverities } from './problem-codes.ts';

/** A problem with the usual severity of its code. */
export function problemOf(
  code: ProblemCode,
  place: Place,
  details: {
    readonly value?: string | number | null;
    readonly parameters?: Parameters;
    readonly suggestion?: string | null;
  } = {},
): Problem {
  return {
    code,
    severity: problemSeverities[code],
    place,
    value: details.value ?? null,
    parameters: details.parameters ?? {},
    suggestion: details.suggestion ?? null,
  };
}
