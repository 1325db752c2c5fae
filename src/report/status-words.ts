/** A density against another in words: one sentence a reader can carry away, with source and standing in sight. */

import type { Comparison, ReferenceUsed, SizeShare } from '../estimates/status/status-answer.ts';
import { type StatusClass, statusClassOf } from '../estimates/status/status-class.ts';
import type { ValueStatus } from '../survey/value-words.ts';
import { sentence } from './catalogue/sentence.ts';
import { formatInterval, formatShare, formatShort, formatSignificant } from './numbers.ts';

/** One sentence a minister can read: the word, the published density with who said it and how it was counted, the chance. */
export function comparisonSentence(one: Comparison): string {
  const against = referenceInWords(one.reference);
  if (one.held !== null) return `not compared with ${against}: ${sentence('en', one.held)}`;
  if (one.bound !== null) return boundSentence(one.bound, against);
  const chance = formatChance(one.probabilityBelow!, statusClassOf);
  const beside =
    one.designProbabilityBelow === null || one.probabilityFrom === 'design'
      ? ''
      : `; by the design alone ${formatChance(one.designProbabilityBelow)}`;
  const from = one.probabilityFrom === 'design' ? 'by the design' : 'clumped counts';
  return `${classInWords[one.statusClass!]} ${against}: chance of being below it ${chance} (${from}${beside})`;
}

const classInWords: Readonly<Record<StatusClass, string>> = {
  below: 'below',
  'likely below': 'likely below',
  'cannot tell': 'cannot tell whether it is below or above',
  'likely above': 'likely above',
  above: 'above',
};

/** None seen is a bound, and never "absent". */
function boundSentence({ perHa, isBelow }: NonNullable<Comparison['bound']>, against: string): string {
  const bound = `below ${formatSignificant(perHa, 2)} per ha`;
  return isBelow
    ? `not recorded, ${bound}, and so below ${against}`
    : `not recorded, ${bound}: too little was searched to say whether that is below ${against}`;
}

/** "the published density 50 per ha (Pakoa and others 2014, belts, from memory, not checked)". */
export function referenceInWords({ content, source, status }: ReferenceUsed): string {
  const told = [
    shortSource(source),
    content.method === 'not stated' ? null : content.method,
    standingInWords(status),
  ];
  const kind = status === 'own' ? 'your own density' : 'the published density';
  return `${kind} ${formatShort(content.densityPerHa)} per ha (${told.filter((part) => part !== null).join(', ')})`;
}

/** Author and year; more than two authors are "and others". */
export function shortSource(source: string): string {
  const [, authors, year] = /^(\p{Lu}.*?) (\d{4})\b/u.exec(source) ?? [];
  if (authors === undefined || year === undefined) return source;
  const names = authors.split(/, | and | & /);
  return `${names.length > 2 ? `${names[0]} and others` : authors} ${year}`;
}

/** Null for what was read in its source. */
export function standingInWords(status: ValueStatus): string | null {
  if (status === 'memory') return 'from memory, not checked';
  return status === 'derived' ? 'worked out from published numbers' : null;
}

/**
 * A chance to two decimals; never 0 or 1, which no survey can say. Where rounding would carry it into the class of
 * another word, a third decimal stands.
 */
export function formatChance(chance: number, classOf: (chance: number) => unknown = () => null): string {
  if (chance > 0.99) return 'over 0.99';
  if (chance < 0.01) return 'under 0.01';
  const text = chance.toFixed(2);
  return classOf(Number(text)) === classOf(chance) ? text : chance.toFixed(3);
}

export function shareSentence({ limitMm, source, status, share, reason }: SizeShare, what: string): string {
  const told = [shortSource(source), standingInWords(status)].filter((part) => part !== null).join(', ');
  const mark = `${what}, ${formatShort(limitMm)} mm (${told})`;
  if (share === null) {
    return `Share at or above the ${mark}: not known${reason === null ? '' : `; ${lower(sentence('en', reason))}`}`;
  }
  const interval =
    share.interval === null
      ? ' (no interval)'
      : ` (${formatInterval([100 * share.interval[0], 100 * share.interval[1]])} %)`;
  return `${formatShare(share.share)}${interval} at or above the ${mark}`;
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
