/** A density against another in words: one sentence a reader can carry away, with source and standing in sight. */

import type { Comparison, ReferenceUsed, SizeShare } from '../estimates/status/status-answer.ts';
import { statusClassOf } from '../estimates/status/status-class.ts';
import type { ValueStatus } from '../survey/value-words.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { statusPhrases } from './catalogue/status-phrases.ts';
import { formatInterval, formatShare, formatShort, formatSignificant, withDecimalMark } from './numbers.ts';

/** One sentence a minister can read: the word, the published density with who said it and how it was counted, the chance. */
export function comparisonSentence(one: Comparison, language: Language = 'en'): string {
  const words = statusPhrases(language);
  const against = referenceInWords(one.reference, language);
  if (one.held !== null) return words.notCompared(against, sentence(language, one.held));
  if (one.bound !== null) return boundSentence(one.bound, against, language);
  const chance = formatChance(one.probabilityBelow!, statusClassOf, language);
  const from = one.probabilityFrom === 'design' ? words.fromDesign : words.fromClumped;
  const told =
    one.designProbabilityBelow === null || one.probabilityFrom === 'design'
      ? from
      : words.besideDesign(
          from,
          formatChance(one.designProbabilityBelow, () => null, language),
        );
  return `${words.compared(words.classes[one.statusClass!], against, chance)} (${told})`;
}

/** None seen is a bound, and never "absent". */
function boundSentence(
  { perHa, isBelow }: NonNullable<Comparison['bound']>,
  against: string,
  language: Language,
): string {
  const words = statusPhrases(language);
  const bound = formatSignificant(perHa, 2, language);
  return isBelow ? words.boundBelow(bound, against) : words.boundOpen(bound, against);
}

/** "the published density 50 per ha (Pakoa and others 2014, belts, from memory, not checked)". */
export function referenceInWords(
  { content, source, status }: ReferenceUsed,
  language: Language = 'en',
): string {
  const words = statusPhrases(language);
  const told = [
    shortSource(source, language),
    content.method === 'not stated' ? null : words.methods[content.method],
    standingInWords(status, language),
  ];
  const kind = status === 'own' ? words.ownDensity : words.publishedDensity;
  const perHa = formatShort(content.densityPerHa, language);
  return words.reference(kind, perHa, told.filter((part) => part !== null).join(', '));
}

/** Author and year; more than two authors are "and others". */
export function shortSource(source: string, language: Language = 'en'): string {
  const [, authors, year] = /^(\p{Lu}.*?) (\d{4})\b/u.exec(source) ?? [];
  if (authors === undefined || year === undefined) return source;
  const names = authors.split(/, | and | & /);
  return `${names.length > 2 ? statusPhrases(language).andOthers(names[0]!) : authors} ${year}`;
}

/** Null for what was read in its source. */
export function standingInWords(status: ValueStatus, language: Language = 'en'): string | null {
  const words = statusPhrases(language);
  if (status === 'memory') return words.memory;
  return status === 'derived' ? words.derived : null;
}

/**
 * A chance to two decimals; never 0 or 1, which no survey can say. Where rounding would carry it into the class of
 * another word, a third decimal stands.
 */
export function formatChance(
  chance: number,
  classOf: (chance: number) => unknown = () => null,
  language: Language = 'en',
): string {
  const words = statusPhrases(language);
  if (chance > 0.99) return words.almostCertain;
  if (chance < 0.01) return words.almostImpossible;
  const text = chance.toFixed(2);
  const shown = classOf(Number(text)) === classOf(chance) ? text : chance.toFixed(3);
  return withDecimalMark(shown, language);
}

/** "Pakoa and others 2014 †", where the dagger says that nobody compared the number with its source. */
export function sourceWithMark(
  { source, status }: { readonly source: string; readonly status: ValueStatus },
  language: Language,
): string {
  const { paper, derived } = statusPhrases(language);
  if (status === 'own') return source === '' ? paper.own : `${paper.own}, ${source}`;
  const short = shortSource(source, language);
  if (status === 'memory') return paper.fromMemory(short);
  return status === 'derived' ? `${short}, ${derived}` : short;
}

export function shareSentence(
  { limitMm, source, status, share, reason }: SizeShare,
  what: string,
  language: Language = 'en',
): string {
  const words = statusPhrases(language);
  const told = [shortSource(source, language), standingInWords(status, language)];
  const from = told.filter((part) => part !== null).join(', ');
  const mark = words.mark(what, formatShort(limitMm, language), from);
  if (share === null) {
    return reason === null
      ? words.shareUnknown(mark)
      : words.shareUnknownAs(mark, lower(sentence(language, reason)));
  }
  const ends = share.interval;
  const between =
    ends === null
      ? words.noInterval
      : `${formatInterval([100 * ends[0], 100 * ends[1]], 2, language)}${language === 'fr' ? '\u00a0' : ' '}%`;
  return words.share(formatShare(share.share), between, mark);
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
