/** The species of the first page in one table: how much, since when, beside what, and the rule. */

import type { Comparison, StatusAnswer } from '../../../estimates/status/status-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { changeInNumbers, toldInWords } from '../../catalogue/change-sentences.ts';
import { harvestPhrases } from '../../catalogue/harvest-phrases.ts';
import type { Language } from '../../catalogue/language.ts';
import { reportPhrases } from '../../catalogue/report-phrases.ts';
import { statusPhrases } from '../../catalogue/status-phrases.ts';
import { headlineSpecies } from '../../headline-species.ts';
import { htmlTable, type TableColumn } from '../../html-table.ts';
import { formatCount, formatInterval, formatShort, formatSignificant } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { speciesNames } from '../../species-names.ts';

export function atAGlance(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language).glance;
  const { heads } = reportPhrases(language);
  const { paper } = harvestPhrases(language);
  const nameOf = speciesNames(input.species);
  const rows = headlineSpecies(advice).flatMap((species) => {
    const status = advice.status.find(({ density }) => density.species === species);
    return status === undefined ? [] : [status];
  });
  const { change, harvest } = advice;
  const since: readonly TableColumn<StatusAnswer>[] =
    change === null
      ? []
      : [
          {
            head: words.since(change.from),
            cell: ({ density }) => sinceCell(density.species, advice, input, language),
          },
        ];
  const closures = harvest.filter(({ closure }) => closure !== null);
  const rule: readonly TableColumn<StatusAnswer>[] =
    closures.length === 0
      ? []
      : [
          {
            head: words.rule,
            cell: ({ density }) => {
              const closure = closures.find(({ species }) => species === density.species)?.closure;
              if (closure == null) return '–';
              return closure.closed ? paper.closed : paper.open;
            },
          },
        ];
  return htmlTable<StatusAnswer>(
    [
      { head: heads.species, cell: ({ density }) => nameOf(density.species).label },
      { head: words.perHa, cell: (one) => nowCell(one, language), number: true },
      {
        head: paper.ruleHeads.found,
        cell: ({ density: { animals, stationsWithSpecies, stations } }) =>
          paper.seen(formatCount(animals), formatCount(stationsWithSpecies), formatCount(stations)),
        number: true,
      },
      ...since,
      { head: words.published, cell: ({ comparisons }) => publishedCell(comparisons, language) },
      ...rule,
    ],
    rows,
    { caption: words.caption },
  );
}

function nowCell({ density }: StatusAnswer, language: Language): string {
  const { paper } = statusPhrases(language);
  const { densityPerHa, intervalPerHa } = density;
  if (densityPerHa === null) return '–';
  if (densityPerHa === 0)
    return intervalPerHa === null ? '0' : paper.notRecorded(formatSignificant(intervalPerHa[1], 2, language));
  const perHa = formatSignificant(densityPerHa, 3, language);
  return intervalPerHa === null ? perHa : paper.here(perHa, formatInterval(intervalPerHa, 2, language));
}

function sinceCell(
  species: string,
  { change }: ReportAdvice,
  { settings }: ReportInput,
  language: Language,
): string {
  const answer = change?.answers.find((one) => one.species === species);
  if (answer === undefined || answer.told === null) return '–';
  const told = toldInWords(answer.told, settings.confidence, language);
  return adviceWords(language).glance.toldWith(told, changeInNumbers(answer, language));
}

/** "below 700 per ha"; several published ones one after the other. */
function publishedCell(comparisons: readonly Comparison[], language: Language): string {
  const words = adviceWords(language).glance;
  const { sides, paper } = statusPhrases(language);
  const told = comparisons
    .filter(({ held }) => held === null)
    .map(({ reference, statusClass, bound }) => {
      const perHa = formatShort(reference.content.densityPerHa, language);
      const side = bound !== null ? (bound.isBelow ? 'below' : null) : statusClass;
      return side === null || side === 'cannot tell' ? paper.cannotTell : words.beside(sides[side], perHa);
    });
  return told.length === 0 ? words.notCompared : told.join(', ');
}
