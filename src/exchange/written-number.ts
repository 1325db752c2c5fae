/** Numbers as people write them when they are not sure: `12-14`, `~20`, `<1`, `5+`. */

export type Approximate =
  | { readonly is: 'range'; readonly low: string; readonly high: string }
  | { readonly is: 'about' | 'below' | 'above'; readonly number: string };

/** What a text says that is a number and something more; null when it is a plain number or none at all. */
export function readApproximate(text: string): Approximate | null {
  const range = /^(\d+(?:\.\d+)?)\s*(?:-|–|—|to|\.\.+|…)\s*(\d+(?:\.\d+)?)$/i.exec(text);
  if (range !== null) {
    return Number(range[1]) <= Number(range[2]) ? { is: 'range', low: range[1]!, high: range[2]! } : null;
  }
  for (const [is, pattern] of forms) {
    const number = pattern.exec(text)?.[1];
    if (number !== undefined) return { is, number };
  }
  return null;
}

const forms: readonly (readonly ['about' | 'below' | 'above', RegExp])[] = [
  ['about', /^(?:~|≈|±|c(?:a|irca)?\.? ?|approx\.? ?|about )\s*(\d+(?:\.\d+)?)$/i],
  ['about', /^(\d+(?:\.\d+)?)\s*\?$/],
  ['below', /^(?:<|≤|<=|under |less than )\s*(\d+(?:\.\d+)?)$/i],
  ['above', /^(?:>|≥|>=|over |more than )\s*(\d+(?:\.\d+)?)$/i],
  ['above', /^(\d+(?:\.\d+)?)\s*\+$/],
];

/** How a mapping says that each kind is to be read; a kind it does not name stays a question. */
export interface ApproximateRules {
  readonly range?: 'low' | 'middle' | 'high' | undefined;
  readonly about?: 'the number' | undefined;
  readonly below?: 'half' | 'the number' | undefined;
  readonly above?: 'the number' | undefined;
}

/** The number a rule makes of a text; null when no rule is about it. */
export function numberByRule(text: string, rules: ApproximateRules): string | null {
  const written = readApproximate(text);
  if (written === null) return null;
  if (written.is === 'range') {
    if (rules.range === undefined) return null;
    if (rules.range === 'middle') return halved(Number(written.low) + Number(written.high));
    return rules.range === 'low' ? written.low : written.high;
  }
  const rule = rules[written.is];
  if (rule === undefined) return null;
  return rule === 'half' ? halved(Number(written.number)) : written.number;
}

/** Ten decimals are more than anybody writes, and cut off what binary arithmetic adds. */
function halved(sum: number): string {
  return String(Number((sum / 2).toFixed(10)));
}
