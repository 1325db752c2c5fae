/** Belts that two divers swam, as pairs of counts of one species or of several together. */

import type { Reason } from '../../survey/message.ts';
import { classifyTransect, type SurveyInHand, type TransectWithTallies } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import { type AgreementOfRaters, agreementOfRaters } from './agreement-of-raters.ts';
import { type LimitsOfAgreement, leastPairs, limitsOfAgreement } from './limits-of-agreement.ts';
import { type CountedTwice, type RatioOfCounts, ratioOfCounts } from './ratio-of-counts.ts';

export interface SwimsCompared {
  /** Belts swum twice where both looked for the species, found or not. */
  readonly beltsSwumTwice: number;
  /** Of those, belts where at least one saw some: the ones compared. */
  readonly beltsCompared: number;
  readonly firstAnimals: number;
  readonly secondAnimals: number;
  readonly ratio: RatioOfCounts | null;
  /** Second less first, in animals per belt. */
  readonly difference: LimitsOfAgreement | null;
  readonly agreement: AgreementOfRaters | null;
  readonly reason: Reason | null;
  readonly cautions: readonly Reason[];
}

/**
 * How alike two divers count the same belts: swim 1 against swim 2, in animals.
 *
 * A belt counts when both swims were searched to the same area and looked for the species; of several species those
 * count, belt by belt, that both looked for. Belts where neither saw any are named and left out.
 */
export function compareSwims(
  inHand: SurveyInHand,
  species: readonly Species[],
  confidence: number,
): SwimsCompared {
  const swum = pairsOf(inHand, species);
  const pairs = swum.filter(({ first, second }) => first + second > 0);
  const differences = pairs.map(({ first, second }) => second - first);
  const few = pairs.length < leastPairs;
  return {
    beltsSwumTwice: swum.length,
    beltsCompared: pairs.length,
    firstAnimals: pairs.reduce((all, { first }) => all + first, 0),
    secondAnimals: pairs.reduce((all, { second }) => all + second, 0),
    ratio: ratioOfCounts(pairs),
    difference: limitsOfAgreement(differences),
    agreement: agreementOfRaters(
      pairs.map(({ first, second }) => [first, second]),
      confidence,
    ),
    reason: few ? { code: 'observers-too-few-pairs', parameters: { pairs: pairs.length } } : null,
    cautions: few ? [] : cautionsOf(swum, pairs),
  };
}

function pairsOf(inHand: SurveyInHand, species: readonly Species[]): readonly CountedTwice[] {
  const pairs: CountedTwice[] = [];
  for (const { record, transects, laterSwims } of inHand.stations) {
    for (const first of transects) {
      const second = laterSwims.find(
        (later) => later.record.code === first.record.code && later.record.swim === first.record.swim + 1,
      );
      if (second === undefined || second.areaCm2 !== first.areaCm2) continue;
      const both = species.filter((one) => wasSearched(first, one) && wasSearched(second, one));
      if (both.length === 0) continue;
      pairs.push({ station: record.code, first: animalsOf(first, both), second: animalsOf(second, both) });
    }
  }
  return pairs;
}

function wasSearched(transect: TransectWithTallies, species: Species): boolean {
  const state = classifyTransect(transect, species);
  return state === 'counted' || state === 'zero';
}

function animalsOf({ tallies }: TransectWithTallies, species: readonly Species[]): number {
  return species.reduce((all, { id }) => all + (tallies.get(id)?.count ?? 0), 0);
}

function cautionsOf(swum: readonly CountedTwice[], pairs: readonly CountedTwice[]): readonly Reason[] {
  const neither = swum.length - pairs.length;
  const means = pairs.map(({ first, second }) => (first + second) / 2).toSorted((a, b) => a - b);
  const few = means[Math.floor(means.length / 2)]! < fewAnimals;
  return [
    ...(neither === 0 ? [] : [{ code: 'observers-neither-saw' as const, parameters: { belts: neither } }]),
    ...(pairs.length < fewBelts ? [{ code: 'observers-few-belts' as const, parameters: {} }] : []),
    ...(few ? [{ code: 'observers-few-animals' as const, parameters: {} }] : []),
  ];
}

/** A count of 5 scatters by half of itself if animals are scattered: a threshold of ours. */
const fewAnimals = 5;

/** At 10 belts a limit has a standard error of half a standard deviation: a threshold of ours. */
const fewBelts = 10;
