/** Gathers problems while reading, without letting a hopeless file fill the memory. */

import type { Problem, ProblemCode } from '../survey/message.ts';
import { problemSeverities } from '../survey/problem-codes.ts';

/** A problem without its severity, which goes with the code. */
type Finding = Omit<Problem, 'severity'>;

export interface ProblemList {
  /** Adds a finding; beyond the cap of its code it is counted and not made. */
  add(code: ProblemCode, make: () => Omit<Finding, 'code'>): void;
  /** All that was kept, with one line per code that says how many more there were. */
  all(): readonly Problem[];
}

/** Kept of each code; the rest is counted. Our own choice: more than a person will read, less than would hurt. */
export const keptPerCode = 1000;

export function problemList(): ProblemList {
  const kept: Problem[] = [];
  const times = new Map<ProblemCode, number>();
  return {
    add(code, make) {
      const before = times.get(code) ?? 0;
      times.set(code, before + 1);
      if (before < keptPerCode) kept.push({ code, severity: problemSeverities[code], ...make() });
    },
    all: () => [...kept, ...moreOfTheSame(times)],
  };
}

function moreOfTheSame(times: ReadonlyMap<ProblemCode, number>): Problem[] {
  return [...times]
    .filter(([, count]) => count > keptPerCode)
    .map(([code, count]) => ({
      code: 'more-of-the-same',
      severity: problemSeverities['more-of-the-same'],
      place: {},
      value: null,
      parameters: { code, count: count - keptPerCode },
      suggestion: null,
    }));
}
