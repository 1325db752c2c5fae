/** What may be taken? Options, and only where somebody chose rates; the decision is the manager's. */

import type { HarvestAnswer } from '../../../estimates/harvest/harvest-answer.ts';
import type { Reason } from '../../../survey/message.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { harvestPhrases } from '../../catalogue/harvest-phrases.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { type Language, sentenceOnPaper } from '../../catalogue/sentence.ts';
import { groupedNotes } from '../../grouped-notes.ts';
import { ruleSentences } from '../../harvest-lines.ts';
import { formatTonnes, percent } from '../../harvest-option-lines.ts';
import { chanceAndRisk } from '../../harvest-steps.ts';
import { heading, list, paragraph, section } from '../../html.ts';
import { htmlTable } from '../../html-table.ts';
import { formatCount, formatShort, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { type SpeciesName, speciesNames } from '../../species-names.ts';
import { formatChance } from '../../status-words.ts';

const example = '--rate "0.05: source" --rate "0.1: source" --rate "0.2: source"';

export function takenSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const { harvest, rates } = advice;
  const recorded = advice.status.filter(({ density }) => density.animals > 0).length;
  const able = harvest.filter(({ catches }) => catches.length > 0);
  const first =
    rates === 0
      ? words.noCatch(example)
      : able.length === 0 && rates < 3
        ? words.fewRates
        : words.catchAnswer(able.length, recorded);
  const naming = { nameOf: speciesNames(input.species), language };
  return section('taken', words.take, [
    paragraph(first),
    paragraph(words.decision),
    ...ruleOf(advice, naming),
    ...ruleUntold(advice, naming),
    ...catches(able, naming),
    ...allZones(able, language),
    ...notes(advice, naming),
    ...(harvest.length === 0 ? [] : [paragraph(harvestPhrases(language).sampledOnly, 'quiet')]),
  ]);
}

interface Naming {
  readonly nameOf: (species: string) => SpeciesName;
  readonly language: Language;
}

/** The rule once in words, then each species with the chance it was judged by. */
function ruleOf({ harvest, status }: ReportAdvice, { nameOf, language }: Naming): readonly string[] {
  const rows = harvest.flatMap(({ species, closure }) => {
    const density = status.find((one) => one.density.species === species)?.density;
    return closure === null || density === undefined ? [] : [{ closure, density }];
  });
  if (rows.length === 0) return [];
  const words = harvestPhrases(language).paper;
  const { limitPerHa, source, risk } = rows[0]!.closure;
  const chance = (value: number | null) => (value === null ? '–' : formatChance(value, () => null, language));
  const table = htmlTable<(typeof rows)[number]>(
    [
      { head: reportPhrases(language).heads.species, cell: ({ density }) => nameOf(density.species).label },
      {
        head: words.ruleHeads.found,
        cell: ({ density: { animals, stationsWithSpecies, stations } }) =>
          words.seen(formatCount(animals), formatCount(stationsWithSpecies), formatCount(stations)),
        number: true,
      },
      {
        head: words.ruleHeads.perHa,
        cell: ({ density: { densityPerHa } }) =>
          densityPerHa === null ? '–' : formatSignificant(densityPerHa, 3, language),
        number: true,
      },
      {
        head: words.ruleHeads.chance,
        cell: ({ closure: { probabilityBelow, risk: borne } }) =>
          probabilityBelow === null
            ? words.noneSeen
            : chanceAndRisk(probabilityBelow, borne, language).chance,
        number: true,
      },
      {
        head: words.ruleHeads.design,
        cell: ({ closure }) => chance(closure.designProbabilityBelow),
        number: true,
      },
      { head: words.ruleHeads.told, cell: ({ closure }) => (closure.closed ? words.closed : words.open) },
    ],
    rows,
    { caption: words.ruleCaption },
  );
  const limit = formatShort(limitPerHa, language);
  const said = words.rule(limit, source, chanceAndRisk(risk, risk, language).risk);
  return [heading(3, words.ruleHead), paragraph(said), table];
}

/** Species of which the rule can say nothing: named, since silence would read as open. */
function ruleUntold({ harvest }: ReportAdvice, { nameOf, language }: Naming): readonly string[] {
  const said = harvest
    .filter(({ ruleUntold: untold }) => untold !== null)
    .map((one) =>
      changePhrases(language).colon(nameOf(one.species!).label, ruleSentences(one, language).join(' ')),
    );
  return said.length === 0 ? [] : [list(said)];
}

/** Where zones were told apart, the stock is that of all of them. */
function allZones(able: readonly HarvestAnswer[], language: Language): readonly string[] {
  const zones = able[0]?.zones ?? [];
  return zones.length < 2 ? [] : [paragraph(harvestPhrases(language).allZones(zones.join(', ')))];
}

function catches(able: readonly HarvestAnswer[], { nameOf, language }: Naming): readonly string[] {
  if (able.length === 0) return [];
  const words = harvestPhrases(language);
  const { heads, paper } = words;
  const rows = able.flatMap(({ species, closure, catches: own }) => {
    const name = nameOf(species!).label;
    const head = closure === null ? name : closure.closed ? paper.closedGroup(name) : paper.openGroup(name);
    return own.map((one) => ({ ...one, head }));
  });
  const table = htmlTable<(typeof rows)[number]>(
    [
      { head: heads.rate, cell: ({ rate }) => percent(rate, language) },
      {
        head: reportPhrases(language).heads.animals,
        cell: ({ animals }) => formatCount(animals),
        number: true,
      },
      {
        head: heads.tonnes,
        cell: ({ tonnes }) => (tonnes === null ? '–' : formatTonnes(tonnes, language)),
        number: true,
      },
      { head: heads.ofStock, cell: ({ shareOfStock }) => percent(shareOfStock, language), number: true },
      { head: heads.source, cell: ({ source }) => source },
    ],
    rows,
    { caption: words.caption, slim: true, group: ({ head }) => head },
  );
  return [heading(3, paper.catchHead), paragraph(paper.catchExplained, 'quiet'), table];
}

/** Why there is no catch, or no tonnes; then the cautions, each once. */
function notes({ harvest }: ReportAdvice, { nameOf, language }: Naming): readonly string[] {
  const words = harvestPhrases(language).paper;
  const say = (reason: Reason) => sentenceOnPaper(language, reason);
  const grouped = (head: string, reasonsOf: (answer: HarvestAnswer) => readonly (Reason | null)[]) => {
    const rows = harvest.map((one) => ({
      species: one.species!,
      scope: '',
      reasons: reasonsOf(one).filter((reason) => reason !== null),
    }));
    const lines = groupedNotes(rows, { nameOf, language, say });
    return lines.length === 0 ? [] : [heading(3, head), `<div class="quiet notes">${list(lines)}</div>`];
  };
  return [
    ...grouped(words.without, ({ reason }) => [reason]),
    ...grouped(words.toRead, ({ reason, weightReason, cautions }) => [
      reason === null ? weightReason : null,
      // The weight of one animal stands with the curves.
      ...cautions.filter(({ code }) => code !== 'weight-of-one'),
    ]),
  ];
}
