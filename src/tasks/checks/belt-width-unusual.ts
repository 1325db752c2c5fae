import { measureProblems } from './belt-measures.ts';
import { checkOf } from './check.ts';
import { plannedEffort } from './planned-effort.ts';

/** A belt of another width than planned: half the width doubles the density. */
export const check = checkOf('belt-width-unusual', ({ inHand }) => {
  const plannedM = plannedEffort(inHand).widthM;
  if (plannedM === null) return [];
  return measureProblems(inHand, {
    code: 'belt-width-unusual',
    plannedM,
    differing: ({ record }) =>
      record.widthM !== null && Math.abs(record.widthM - plannedM) > 0.01 ? record.widthM : null,
    suggestion: () => String(plannedM),
  });
});
