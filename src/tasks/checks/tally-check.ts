import type { Parameters, Problem } from '../../survey/message.ts';
import type { ProblemCode } from '../../survey/problem-codes.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { Species, Tally } from '../../survey/words.ts';
import { allTransects, type Check, checkOf, type Finding, placeOfTransect } from './check.ts';

export interface TallyFinding extends Finding {
  readonly parameters: Parameters;
}

/** A check that looks at one tally at a time, lengths and all, and asks at most once there. */
export function tallyCheck(
  code: ProblemCode,
  look: (tally: Tally, species: Species) => TallyFinding | null,
): Check {
  return checkOf(code, ({ inHand, species }) => {
    const found: Problem[] = [];
    for (const station of inHand.stations) {
      for (const transect of allTransects(station)) {
        for (const tally of transect.tallies.values()) {
          const one = species.get(tally.speciesId)!;
          const finding = look(tally, one);
          if (finding === null) continue;
          const place = { ...placeOfTransect(inHand, station, transect), species: one.name };
          found.push(problemOf(code, place, finding));
        }
      }
    }
    return found;
  });
}
