/** Tables of a plan page, but for the stations one by one. */

import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { htmlTable, type TableColumn } from '../html-table.ts';
import { formatCount, formatHectares, formatShare, formatSignificant, withDecimalMark } from '../numbers.ts';
import { type PlanStratumRow, stratumRows } from '../plan-lines.ts';
import type { PlanPageInput } from './plan-page-input.ts';

type StrataRow = PlanStratumRow & { readonly isWhole: boolean };

export function strataTable({ content }: PlanPageInput, language: Language): string {
  const { strata: words, replacements } = planPagePhrases(language);
  const hectares = (areaHa: number) => formatHectares(areaHa, language);
  const rows = stratumRows(content);
  const sum = (of: (row: PlanStratumRow) => number) => rows.reduce((total, row) => total + of(row), 0);
  const areaHa = sum((row) => row.areaHa);
  const whole: StrataRow = {
    ...{ name: words.all, areaHa, maskedHa: sum((row) => row.maskedHa), isWhole: true },
    ...{ stations: sum((row) => row.stations), spares: sum((row) => row.spares) },
    ...{ planned: sum((row) => row.planned), fixed: sum((row) => row.fixed) },
    ...{ handPicked: sum((row) => row.handPicked), replaced: sum((row) => row.replaced) },
    sparesLeft: sum((row) => row.sparesLeft),
  };
  const count = (head: string, of: (row: PlanStratumRow) => number): TableColumn<StrataRow> => ({
    head,
    cell: (row) => formatCount(of(row)),
    number: true,
  });
  return htmlTable<StrataRow>(
    [
      { head: replacements.stratum, cell: ({ name }) => name },
      { head: words.areaHa, cell: (row) => hectares(row.areaHa), number: true },
      {
        head: words.share,
        cell: (row) => withDecimalMark((row.areaHa / areaHa).toFixed(2), language),
        number: true,
      },
      { head: words.maskedHa, cell: (row) => hectares(row.maskedHa), number: true },
      count(words.stations, (row) => row.planned),
      count(words.fixed, (row) => row.fixed),
      count(words.handPicked, (row) => row.handPicked),
      count(words.replaced, (row) => row.replaced),
      count(words.sparesLeft, (row) => row.sparesLeft),
    ],
    [...rows.map((row) => ({ ...row, isWhole: false })), whole],
    {
      caption: words.caption,
      strong: (row) => row.isWhole,
    },
  );
}

export function precisionTable({ precision }: PlanPageInput, language: Language): string {
  const words = planPagePhrases(language).precision;
  return htmlTable(
    [
      { head: words.species, cell: ({ species }) => species },
      {
        head: words.densityPerHa,
        cell: ({ densityPerHa }) => formatSignificant(densityPerHa, 3, language),
        number: true,
      },
      { head: words.cv, cell: ({ cv }) => formatShare(cv), number: true },
      { head: words.cvAssured, cell: ({ cvAssured }) => formatShare(cvAssured), number: true },
      { head: words.fall, cell: ({ fall }) => factorInWords(1 - fall, language), number: true },
      { head: words.rise, cell: ({ rise }) => factorInWords(1 + rise, language), number: true },
    ],
    precision.species,
    { caption: words.caption(precision.pilot ?? '') },
  );
}

/** Beyond a hundredth or a hundredfold a change is not told by any survey worth the name: no digits are pretended. */
function factorInWords(factor: number, language: Language): string {
  if (factor < 0.01) return `< × ${withDecimalMark('0.01', language)}`;
  return factor > 100 ? '> × 100' : `× ${formatSignificant(factor, 2, language)}`;
}

export function replacementTable({ content }: PlanPageInput, language: Language): string {
  const { replacements: words } = planPagePhrases(language);
  return htmlTable(
    [
      { head: words.dropped, cell: ({ dropped }) => dropped },
      { head: words.replacement, cell: ({ replacement }) => replacement ?? words.none },
      { head: words.stratum, cell: ({ stratum }) => stratum },
      { head: words.why, cell: ({ reason }) => reason },
      { head: words.who, cell: ({ who, date }) => `${who}, ${date}` },
    ],
    content.replacements,
    { caption: words.caption },
  );
}

export function againstTable({ against }: PlanPageInput, language: Language): string {
  const { against: words, replacements } = planPagePhrases(language);
  return htmlTable(
    [
      { head: replacements.stratum, cell: ({ stratum }) => stratum },
      { head: words.planned, cell: ({ planned }) => formatCount(planned), number: true },
      { head: words.visited, cell: ({ visited }) => formatCount(visited), number: true },
      { head: words.replaced, cell: ({ replaced }) => formatCount(replaced), number: true },
      { head: words.notVisited, cell: ({ notVisited }) => notVisited.join(', ') },
    ],
    against?.strata ?? [],
    { caption: words.caption, slim: true },
  );
}
