/**
 * A sentence with slots. `{row}` is replaced by its value; `[in row {row}]` stands only where every
 * slot in it has a value, so that nobody ever reads "row undefined". `{rows} {rows:row was|rows were}`
 * says the words that fit the number in the slot `rows`: "1 row was", "12 rows were".
 */

import { isSaidAsOne } from '../../survey/counted.ts';

const slot = /\{([A-Za-z0-9]+)(?::([^{}|]*)\|([^{}|]*))?\}/g;

export function fillSentence(
  template: string,
  values: Readonly<Record<string, string>>,
  notGiven = 'not given',
): string {
  const whole = template.replace(/\[([^[\]]*)\]/g, (_, part: string) =>
    slotsOf(part).every((name) => values[name] !== undefined) ? part : '',
  );
  return whole
    .replace(slot, (_, name: string, one?: string, many?: string) => {
      if (one === undefined || many === undefined) return values[name] ?? notGiven;
      return isSaidAsOne(values[name] ?? '') ? one : many;
    })
    .replace(/ {2,}/g, ' ')
    .trim();
}

/** A template as a list of sentences shows it: every noun beside its slot as many have it. */
export function templateOfMany(template: string): string {
  return template.replace(slot, (whole, _name, _one, many?: string) => many ?? whole);
}

/** The slots of a template, in the order in which they stand. */
export function slotsOf(template: string): string[] {
  return [...template.matchAll(slot)].map((match) => match[1]!);
}
