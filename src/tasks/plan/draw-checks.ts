/** What an officer should hear about the ground of a draw. */

import { type PlanProblem, planProblem } from '../../planning/size/plan-problem.ts';
import { formatShare, formatShort } from '../../report/numbers.ts';
import type { PlanContent } from '../../survey/plan-words.ts';
import type { Protocol } from '../../survey/words.ts';
import type { PlanGround } from './plan-ground.ts';
import type { StationsAsked } from './stations-per-stratum.ts';

/** Smaller than a single short belt: no station searches less (our own choice, where no protocol says more). */
const leastSearchedM2 = 40;

/** Stations that would have to lie on one another. */
export function crowdedStrata(
  asked: StationsAsked,
  ground: PlanGround,
  protocol: Protocol | null,
): readonly PlanProblem[] {
  if (asked.strata.every(({ stations }) => stations === 0)) return [planProblem('plan-nothing-drawn')];
  const searchedM2 = searchedOf(protocol) ?? leastSearchedM2;
  return asked.strata.flatMap(({ name, stations }) => {
    const areaHa = ground.strata.get(name)!.mapped.ground.leftHa;
    const eachM2 = (areaHa * 10_000) / stations;
    if (!(eachM2 < searchedM2)) return [];
    return [planProblem('plan-stratum-crowded', { stratum: name, stations, areaHa, eachM2, searchedM2 })];
  });
}

/** Too few for a spread: with one station the report has no standard error, with two one that is hardly known. */
export function thinStrata(asked: StationsAsked): readonly PlanProblem[] {
  return asked.strata.flatMap(({ name: stratum, stations }) => {
    if (stations === 1) return [planProblem('plan-lone-station', { stratum })];
    if (stations === 2) return [planProblem('plan-few-in-stratum', { stratum, stations, other: '' })];
    return [];
  });
}

function searchedOf(protocol: Protocol | null): number | null {
  if (protocol === null) return null;
  const { transectsPerStation, lengthM, widthM } = protocol;
  if (transectsPerStation === null || lengthM === null || widthM === null) return null;
  return transectsPerStation * lengthM * widthM;
}

/** Masks, borders that may still move, and a spread that luck spoiled. */
export function groundNotes(content: PlanContent, ground: PlanGround): readonly PlanProblem[] {
  const masked = content.strata.flatMap(({ name, areaHa, maskedHa, dropped = [] }) => {
    if (maskedHa <= 0 || dropped.length === 0) return [];
    const masks = dropped
      .map((mask) => `${mask.name} (${mask.why}) ${formatShort(mask.areaHa)} ha`)
      .join(', ');
    const share = formatShare(maskedHa / (areaHa + maskedHa));
    return [planProblem('plan-masks-dropped', { stratum: name, areaHa: maskedHa, share, masks })];
  });
  const movable = content.strata.filter(({ name }) => ground.strata.get(name)?.frozenOn === null);
  const poor = content.strata.flatMap(({ name, balance }) =>
    balance === undefined || balance.shareAsGood < 0.25
      ? []
      : [planProblem('plan-balance-poor', { stratum: name, share: formatShare(balance.shareAsGood) })],
  );
  const names = movable.map(({ name }) => name).join(', ');
  return [
    ...masked,
    ...poor,
    ...(names === '' ? [] : [planProblem('plan-borders-movable', { strata: names })]),
  ];
}
