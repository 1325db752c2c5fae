/** Options that are nothing without their source: a reference density, a rate, a limit, a mean weight. */

import { InvalidArgumentError } from 'commander';
import type { ReferenceUsed } from '../estimates/status/status-answer.ts';
import { type CountMethod, countMethods } from '../survey/value-words.ts';

export interface SourcedNumber {
  readonly value: number;
  readonly source: string;
}

/** `value: source: method`, with `cv 0.2` after the value where the reference has a spread. */
export function referenceOption(text: string): ReferenceUsed {
  const last = text.lastIndexOf(':');
  const first = text.indexOf(':');
  const method = text.slice(last + 1).trim();
  const source = text.slice(first + 1, last).trim();
  const said = /^([\d.]+)\s*(?:per ha)?(?:,?\s*cv\s+([\d.]+))?$/.exec(text.slice(0, first).trim());
  const densityPerHa = Number(said?.[1]);
  const cv = said?.[2] === undefined ? null : Number(said[2]);
  if (first > 0 && !(densityPerHa > 0 && (cv === null || cv >= 0))) {
    throw new InvalidArgumentError('begin with the density per hectare, as in "50: Author 2014: belts"');
  }
  if (first < 0 || last === first || source === '' || !isMethod(method)) {
    throw new InvalidArgumentError(
      `a density is nothing without its source and the way of counting: write "50: Author 2014: belts"; the ways are ${ways.join(', ')}`,
    );
  }
  const content = {
    what: 'reference-density',
    densityPerHa,
    cv,
    method,
    beltWidthM: null,
    place: null,
    meaning: 'typed',
  } as const;
  return { content, source, status: 'own', note: null };
}

const ways = countMethods.filter((method) => method !== 'not stated');

function isMethod(text: string): text is Exclude<CountMethod, 'not stated'> {
  return (ways as readonly string[]).includes(text);
}

/** Reads `0.05: source`, the number within the bounds; a number without a source is refused. */
export function sourcedOption(
  what: string,
  low: number,
  high: number,
  example: string,
): (text: string) => SourcedNumber {
  return (text) => {
    const at = text.indexOf(':');
    const source = at < 0 ? '' : text.slice(at + 1).trim();
    if (source === '') {
      throw new InvalidArgumentError(`${what} is nothing without its source: write it as in "${example}"`);
    }
    const said = /^([\d.]+)\s*(?:per ha|kg)?$/.exec(text.slice(0, at).trim());
    const value = Number(said?.[1]);
    if (value > low && value <= high) return { value, source };
    throw new InvalidArgumentError(`${what} goes from ${low} to ${high}: write it as in "${example}"`);
  };
}
