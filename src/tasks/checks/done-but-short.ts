import { measureProblems } from './belt-measures.ts';
import { checkOf } from './check.ts';
import { plannedEffort } from './planned-effort.ts';

/** A belt shorter than planned that is marked done: unequal effort that nobody declared. */
export const check = checkOf('done-but-short', ({ inHand }) => {
  const plannedM = plannedEffort(inHand).lengthM;
  if (plannedM === null) return [];
  return measureProblems(inHand, {
    code: 'done-but-short',
    plannedM,
    // A twentieth is what a tape over rough bottom loses (common practice).
    differing: ({ record, status }) =>
      status === 'done' &&
      record.reason === null &&
      record.lengthM !== null &&
      record.lengthM < 0.95 * plannedM
        ? record.lengthM
        : null,
    suggestion: (lengthM) => (10 * lengthM === plannedM ? String(plannedM) : null),
  });
});
