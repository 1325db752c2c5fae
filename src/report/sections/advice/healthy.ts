/** Is that healthy? Against published densities, and the shares of mature and legal animals. */

import type { Comparison, SizeShare, StatusAnswer } from '../../../estimates/status/status-answer.ts';
import { statusClassOf } from '../../../estimates/status/status-class.ts';
import type { Reason } from '../../../survey/message.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { statusPhrases } from '../../catalogue/status-phrases.ts';
import { groupedNotes } from '../../grouped-notes.ts';
import { figure, heading, list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatInterval, formatShare, formatShort, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { shareStrip } from '../../share-strip.ts';
import { nameInSentence, type SpeciesName, speciesNames } from '../../species-names.ts';
import { formatChance, sourceWithMark } from '../../status-words.ts';
import { ended, names } from './words-of-advice.ts';

export function healthySection(input: ReportInput, { status }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const naming = { nameOf, language };
  const compared = status.filter(({ comparisons }) => comparisons.length > 0);
  const on = (side: Side) =>
    names(
      status
        .filter((one) => sideOf(one) === side)
        .map(({ density }) => nameInSentence(nameOf(density.species))),
      words.none,
    );
  return section('healthy', words.healthy, [
    paragraph(
      compared.length === 0 ? words.noValues : words.statusAnswer(on('below'), on('above'), on('open')),
    ),
    ...(compared.length === 0
      ? []
      : [...comparedTable(status, naming), ...heldTable(status, naming), ...comparedNotes(status, naming)]),
    heading(3, words.shares),
    ...sharesOf(status, naming),
  ]);
}

type Side = 'below' | 'above' | 'open' | 'none';

/** On which side of all the densities it can be compared with. */
function sideOf({ comparisons }: StatusAnswer): Side {
  const compared = comparisons.filter(({ held }) => held === null);
  if (compared.length === 0) return 'none';
  const isBelow = compared.every(({ statusClass, bound }) =>
    bound === null ? statusClass === 'below' || statusClass === 'likely below' : bound.isBelow,
  );
  if (isBelow) return 'below';
  const isAbove = compared.every(
    ({ statusClass, bound }) => bound === null && (statusClass === 'above' || statusClass === 'likely above'),
  );
  return isAbove ? 'above' : 'open';
}

interface Naming {
  readonly nameOf: (species: string) => SpeciesName;
  readonly language: Language;
}

interface Compared {
  readonly answer: StatusAnswer;
  readonly one: Comparison;
}

function pairsOf(status: readonly StatusAnswer[], isHeld: boolean): readonly Compared[] {
  return status.flatMap((answer) =>
    answer.comparisons.filter(({ held }) => (held !== null) === isHeld).map((one) => ({ answer, one })),
  );
}

function comparedTable(status: readonly StatusAnswer[], { nameOf, language }: Naming): readonly string[] {
  const rows = pairsOf(status, false);
  if (rows.length === 0) return [];
  const { paper } = statusPhrases(language);
  const { heads } = paper;
  const table = htmlTable<Compared>(
    [
      {
        head: reportPhrases(language).heads.species,
        cell: ({ answer }) => nameOf(answer.density.species).label,
      },
      {
        head: heads.published,
        cell: ({ one }) => formatShort(one.reference.content.densityPerHa, language),
        number: true,
      },
      { head: heads.source, cell: ({ one }) => sourceWithMark(one.reference, language) },
      { head: heads.here, cell: (row) => hereCell(row, language), number: true },
      { head: heads.told, cell: (row) => toldCell(row, language) },
      {
        head: heads.chance,
        cell: ({ one }) =>
          one.probabilityBelow === null ? '–' : formatChance(one.probabilityBelow, statusClassOf, language),
        number: true,
      },
      {
        head: heads.design,
        cell: ({ one }) =>
          one.designProbabilityBelow === null
            ? '–'
            : formatChance(one.designProbabilityBelow, () => null, language),
        number: true,
      },
    ],
    rows,
    { caption: paper.caption },
  );
  return [table];
}

function hereCell({ answer, one }: Compared, language: Language): string {
  const { paper } = statusPhrases(language);
  const { densityPerHa, intervalPerHa } = answer.density;
  if (one.bound !== null) return paper.notRecorded(formatSignificant(one.bound.perHa, 2, language));
  if (densityPerHa === null) return '–';
  const perHa = formatSignificant(densityPerHa, 3, language);
  return intervalPerHa === null ? perHa : paper.here(perHa, formatInterval(intervalPerHa, 2, language));
}

function toldCell({ one }: Compared, language: Language): string {
  const { paper, sides } = statusPhrases(language);
  if (one.bound !== null) return one.bound.isBelow ? sides.below : paper.cannotTell;
  const told = one.statusClass;
  return told === null || told === 'cannot tell' ? paper.cannotTell : sides[told];
}

function heldTable(status: readonly StatusAnswer[], { nameOf, language }: Naming): readonly string[] {
  const rows = pairsOf(status, true);
  if (rows.length === 0) return [];
  const { paper, methods } = statusPhrases(language);
  const { heads } = paper;
  const table = htmlTable<Compared>(
    [
      {
        head: reportPhrases(language).heads.species,
        cell: ({ answer }) => nameOf(answer.density.species).label,
      },
      {
        head: heads.published,
        cell: ({ one }) => formatShort(one.reference.content.densityPerHa, language),
        number: true,
      },
      { head: heads.source, cell: ({ one }) => sourceWithMark(one.reference, language) },
      { head: heads.countedBy, cell: ({ one }) => methods[one.reference.content.method] },
      { head: heads.why, cell: ({ one }) => whyHeld(one.held!, language) },
    ],
    rows,
    { caption: paper.heldCaption },
  );
  return [heading(3, paper.heldHead), paragraph(paper.heldExplained, 'quiet'), table];
}

function whyHeld(held: Reason, language: Language): string {
  const { paper } = statusPhrases(language);
  if (held.code === 'reference-other-method') return paper.otherWay;
  return held.code === 'reference-method-unknown' ? paper.wayNotTold : sentenceOnPaper(language, held);
}

/** What limits a comparison, then what a published density is. */
function comparedNotes(status: readonly StatusAnswer[], { nameOf, language }: Naming): readonly string[] {
  const rows = status.map(({ density, comparisons }) => ({
    species: density.species,
    scope: '',
    reasons: comparisons.filter(({ held }) => held === null).flatMap(({ limitations }) => limitations),
  }));
  const say = (reason: Reason) => sentenceOnPaper(language, reason);
  const lines = groupedNotes(rows, { nameOf, language, say });
  const marked = status.some(({ comparisons }) =>
    comparisons.some(({ reference }) => reference.status === 'memory'),
  );
  return [
    paragraph(adviceWords(language).statusLimits, 'quiet'),
    ...(marked ? [paragraph(statusPhrases(language).paper.memoryNote, 'quiet')] : []),
    ...(lines.length === 0 ? [] : [`<div class="quiet notes">${list(lines)}</div>`]),
  ];
}

interface ShareRow {
  readonly species: string;
  readonly share: SizeShare;
  /** In the figure and in the table. */
  readonly short: string;
  readonly long: string;
  readonly measured: number;
  readonly animals: number;
}

function sharesOf(status: readonly StatusAnswer[], naming: Naming): readonly string[] {
  const { nameOf, language } = naming;
  const words = adviceWords(language);
  const rows = status
    .filter(({ density }) => density.animals > 0)
    .flatMap((answer) => shareRows(answer, language));
  const known = rows.filter(({ share }) => share.share !== null);
  if (known.length === 0) return [paragraph(words.noLengths)];
  const drawn = known.map(({ species, short, share }) => ({
    label: `${nameOf(species).label}, ${short} (${formatShort(share.limitMm, language)} mm)`,
    ...share.share!,
  }));
  const inWords = drawn.map(({ label, share }) => `${label}: ${formatShare(share)}`).join('; ');
  const marked = rows.some(({ share }) => share.status === 'memory');
  return [
    figure(shareStrip(drawn, inWords), words.sharesExplained),
    shareTable(rows, naming),
    ...(marked ? [paragraph(statusPhrases(language).paper.memoryNote, 'quiet')] : []),
  ];
}

function shareRows(
  { density, atMaturity, atLegalSize, measured }: StatusAnswer,
  language: Language,
): readonly ShareRow[] {
  const words = adviceWords(language);
  const phrases = statusPhrases(language);
  const { species, animals } = density;
  const rest = { species, measured, animals };
  return [
    ...atMaturity.map((share) => ({ share, short: words.mature, long: phrases.atMaturity, ...rest })),
    ...(atLegalSize === null
      ? []
      : [{ share: atLegalSize, short: words.legal, long: phrases.atLimit, ...rest }]),
  ];
}

function shareTable(rows: readonly ShareRow[], { nameOf, language }: Naming): string {
  const { paper } = statusPhrases(language);
  const { heads } = paper;
  return htmlTable<ShareRow>(
    [
      { head: reportPhrases(language).heads.species, cell: ({ species }) => nameOf(species).label },
      { head: heads.mark, cell: ({ long }) => long },
      { head: heads.markMm, cell: ({ share }) => formatShort(share.limitMm, language), number: true },
      {
        head: heads.source,
        // The book's own limit: its source is what somebody wrote beside it.
        cell: ({ share }) => (share.status === 'own' ? share.source : sourceWithMark(share, language)),
      },
      {
        head: heads.measured,
        cell: ({ measured, animals }) => paper.someOf(formatCount(measured), formatCount(animals)),
        number: true,
      },
      { head: heads.share, cell: ({ share }) => shareCell(share, language), number: true },
    ],
    rows,
    {
      caption: paper.sharesCaption,
      across: ({ share: { share, reason } }) =>
        share !== null || reason === null ? null : ended(sentenceOnPaper(language, reason)),
      acrossFrom: 5,
    },
  );
}

function shareCell({ share }: SizeShare, language: Language): string {
  const { paper, noInterval } = statusPhrases(language);
  if (share === null) return '–';
  const between =
    share.interval === null
      ? noInterval
      : formatInterval([100 * share.interval[0], 100 * share.interval[1]], 2, language);
  return paper.share(formatShare(share.share), between);
}
