/**
 * A sentence with slots. `{row}` is replaced by its value; `[in row {row}]` stands only where every
 * slot in it has a value, so that nobody ever reads "row undefined".
 */
export function fillSentence(
  template: string,
  values: Readonly<Record<string, string>>,
  notGiven = 'not given',
): string {
  const whole = template.replace(/\[([^[\]]*)\]/g, (_, part: string) =>
    slotsOf(part).every((slot) => values[slot] !== undefined) ? part : '',
  );
  return whole
    .replace(/\{([A-Za-z0-9]+)\}/g, (_, slot: string) => values[slot] ?? notGiven)
    .replace(/ {2,}/g, ' ')
    .trim();
}

/** The slots of a template, in the order in which they stand. */
export function slotsOf(template: string): string[] {
  return [...template.matchAll(/\{([A-Za-z0-9]+)\}/g)].map((match) => match[1]!);
}
