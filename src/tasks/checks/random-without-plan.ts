import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, placeOfStation } from './check.ts';
import { plannedFor } from './ground.ts';

/**
 * A station marked random that has no planned position though the others have: a drawn place is written down before
 * the boat leaves. Asked from five random stations on, four fifths of which have a plan (our rule).
 */
export const check = checkOf('random-without-plan', ({ inHand, ground }) => {
  // Where the book has the plan itself, hand-picked-marked-random asks, and knows more.
  if (plannedFor(inHand.survey.name, ground) !== null) return [];
  const random = inHand.stations.filter(({ record }) => record.selection === 'random');
  const unplanned = random.filter(({ record }) => record.plannedLatitudeDeg === null);
  if (random.length < 5 || 5 * unplanned.length > random.length) return [];
  const parameters = { planned: random.length - unplanned.length, of: random.length };
  return unplanned.map((station) => {
    const details = { value: 'random', parameters, suggestion: 'hand-picked' };
    return problemOf('random-without-plan', placeOfStation(inHand, station), details);
  });
});
