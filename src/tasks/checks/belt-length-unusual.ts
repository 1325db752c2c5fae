import { measureProblems } from './belt-measures.ts';
import { checkOf } from './check.ts';
import { plannedEffort } from './planned-effort.ts';

/** A belt longer than planned by a tenth or more: 400 for 40. A short one is `done-but-short` or a partial belt. */
export const check = checkOf('belt-length-unusual', ({ inHand }) => {
  const plannedM = plannedEffort(inHand).lengthM;
  if (plannedM === null) return [];
  return measureProblems(inHand, {
    code: 'belt-length-unusual',
    plannedM,
    differing: ({ record }) =>
      record.lengthM !== null && record.lengthM >= 1.1 * plannedM ? record.lengthM : null,
    // A zero too many; other lengths may be true.
    suggestion: (lengthM) => (lengthM === 10 * plannedM ? String(plannedM) : null),
  });
});
