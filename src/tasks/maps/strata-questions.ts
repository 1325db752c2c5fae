/** What a map that comes into the book has to answer: names, typed areas, frozen borders, masks. */

import { areaHaOf } from '../../planning/ground/area-size.ts';
import { checkTypedArea } from '../../planning/ground/typed-area.ts';
import type { Problem } from '../../survey/message.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { MapAreaRecord, Stratum } from '../../survey/words.ts';
import type { BookGround } from './book-ground.ts';
import { mapProblems } from './map-problems.ts';
import { isSameGround } from './recorded-ground.ts';

/** Two spellings of one name would make two strata, one without stations and one without a map. */
export function nearNames(names: readonly string[], strata: readonly Stratum[]): readonly Problem[] {
  return names.flatMap((name) => {
    const alike = strata.find((one) => bare(one.name) === bare(name));
    return alike === undefined
      ? []
      : [problemOf('area-name-near', {}, { value: name, suggestion: alike.name })];
  });
}

/** North and south differ by two letters: only what typing habits change is taken for the same name. */
function bare(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}

/** A typed area may be with the masks or without them; only one that fits neither is asked about. */
export function typedAreas(
  strata: readonly Stratum[],
  before: readonly MapAreaRecord[],
  ground: BookGround,
): readonly Problem[] {
  const mapped = new Set(before.filter(({ role }) => role === 'stratum').map(({ name }) => name));
  const findings = ground.strata.flatMap(({ name, ground: { leftHa, wholeHa } }) => {
    const typedHa = strata.find((one) => one.name === name)?.areaHa ?? null;
    if (typedHa === null || mapped.has(name)) return [];
    if (checkTypedArea({ name, typedHa, mapHa: wholeHa }).length === 0) return [];
    return checkTypedArea({ name, typedHa, mapHa: leftHa });
  });
  return mapProblems(findings, null);
}

/** Frozen is fixed before any result was seen: a new border, or a mask that takes ground away, needs a name and a reason. */
export function frozenChanges(
  before: readonly MapAreaRecord[],
  after: readonly MapAreaRecord[],
  strata: readonly Stratum[],
  ground: BookGround,
  acceptance: { readonly who: string; readonly why: string } | null,
): readonly Problem[] {
  if (acceptance !== null) return [];
  return before.flatMap((old) => {
    const { name, role, content } = old;
    if (role !== 'stratum' || content.frozenOn === null) return [];
    const now = after.find((one) => one.id === old.id);
    const becomesHa = ground.strata.find((one) => one.name === name)?.ground.leftHa ?? 0;
    const wasHa = strata.find((one) => one.name === name)?.areaHa ?? areaHaOf(content.area);
    const moved = now === undefined || !isSameGround(old, now.content.area);
    if (!moved && Math.abs(becomesHa - wasHa) < 0.0001) return [];
    return [
      problemOf(
        'stratum-frozen',
        {},
        { parameters: { area: name, frozenOn: content.frozenOn, wasHa, becomesHa } },
      ),
    ];
  });
}

export function allMasked({ strata }: BookGround): readonly Problem[] {
  return strata
    .filter(({ ground }) => ground.wholeHa > 0 && ground.leftHa < 0.0001)
    .map(({ name, ground }) =>
      problemOf('stratum-all-masked', {}, { parameters: { area: name, wholeHa: ground.wholeHa } }),
    );
}
