/** What a person most likely meant by a question that nobody asks. */

import type { Problem } from '../survey/message.ts';
import { nearestName } from '../survey/nearest-name.ts';

interface Wanted {
  readonly code: string;
  readonly station: string | null;
}

export interface NearestQuestions {
  /** A code of an open question that is spelt almost so; null when the code is right or none is near. */
  readonly nearestCode: string | null;
  /** Up to eight questions in words: of the same code, else of the same station, else any. */
  readonly known: string;
}

export function nearestQuestions({ code, station }: Wanted, problems: readonly Problem[]): NearestQuestions {
  const answerable = problems.filter(({ severity }) => severity !== 'stop');
  const sameCode = answerable.filter((one) => one.code === code);
  const sameStation = answerable.filter((one) => station !== null && one.place.station === station);
  const codes = new Set<string>(answerable.map((one) => one.code));
  const list = [sameCode, sameStation, answerable].find((one) => one.length > 0) ?? [];
  return {
    nearestCode: sameCode.length > 0 ? null : nearestName(code, codes),
    known: list
      .slice(0, 8)
      .map((one) => describePlace(one))
      .join('; '),
  };
}

/** "transect-unresolved at station S7, transect 3". */
export function describePlace({ code, place, value }: Problem): string {
  const { station, transect, swim, species } = place;
  const words = [
    station && `station ${station}`,
    transect && `transect ${transect}`,
    swim !== undefined && swim > 1 && `swim ${swim}`,
    species,
  ].filter((word) => typeof word === 'string' && word !== '');
  if (words.length === 0) return value === null ? code : `${code} (${value})`;
  return `${code} at ${words.join(', ')}`;
}
