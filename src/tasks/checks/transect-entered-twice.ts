import { alikeByChance, leastChance } from '../../estimates/alike-by-chance.ts';
import type { Problem } from '../../survey/message.ts';
import type { StationWithTransects, TransectWithTallies } from '../../survey/observation.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { Length } from '../../survey/words.ts';
import { type CheckContext, checkOf, isSearched, placeOfTransect } from './check.ts';
import { lengthRepeats } from './length-repeats.ts';

/** Two belts with the same species, counts and lengths in the same order, beyond what chance makes. */
export const check = checkOf('transect-entered-twice', ({ inHand }) => {
  const belts = inHand.stations.flatMap((station) =>
    station.transects
      .filter((transect) => isSearched(transect) && transect.tallies.size > 0)
      .map((transect) => ({ station, transect })),
  );
  const pairs = (belts.length * (belts.length - 1)) / 2;
  const repeats = lengthRepeats(inHand);
  const seen = new Map<number, Belt>();
  const found: Problem[] = [];
  for (const belt of belts) {
    const { tallies } = belt.transect;
    if (pairs * leastChance(tallies) >= alarmsPerSurvey) continue;
    const print = printOf(belt.transect);
    const first = seen.get(print);
    if (first === undefined) seen.set(print, belt);
    else if (isSame(first.transect, belt.transect)) {
      if (pairs * alikeByChance(tallies, repeats()) < alarmsPerSurvey)
        found.push(problem(inHand, belt, first));
    }
  }
  return found;
});

interface Belt {
  readonly station: StationWithTransects;
  readonly transect: TransectWithTallies;
}

/** One survey in a hundred may be asked about a pair that chance made. */
const alarmsPerSurvey = 0.01;

/** One number for the species, counts and lengths of a belt: equal belts have equal ones, others rarely. */
function printOf({ tallies }: TransectWithTallies): number {
  let print = 0;
  for (const { speciesId, count, lengths } of tallies.values()) {
    let part = count;
    // The end of an identity is its random part.
    for (let i = speciesId.length - 8; i < speciesId.length; i++) {
      part = (Math.imul(part, 31) + speciesId.charCodeAt(i)) | 0;
    }
    for (const { lengthMm, n } of lengths) part = (Math.imul(part, 1_000_003) + 8 * lengthMm + n) | 0;
    print = (print + part) | 0;
  }
  return print;
}

function isSame({ tallies: a }: TransectWithTallies, { tallies: b }: TransectWithTallies): boolean {
  if (a.size !== b.size) return false;
  for (const [speciesId, { count, lengths }] of a) {
    const other = b.get(speciesId);
    if (other === undefined || other.count !== count || other.lengths.length !== lengths.length) return false;
    const differs = ({ lengthMm, n }: Length, i: number) =>
      other.lengths[i]!.lengthMm !== lengthMm || other.lengths[i]!.n !== n;
    if (lengths.some(differs)) return false;
  }
  return true;
}

function problem(inHand: CheckContext['inHand'], belt: Belt, first: Belt): Problem {
  const { station, transect } = first;
  let animals = 0;
  for (const { count } of belt.transect.tallies.values()) animals += count;
  const twin = `station ${station.record.code}, transect ${transect.record.code}`;
  const place = placeOfTransect(inHand, belt.station, belt.transect);
  return problemOf('transect-entered-twice', place, { value: twin, parameters: { animals } });
}
