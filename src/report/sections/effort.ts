/** What was done, by stratum and by day. */

import { reportWords } from '../catalogue/report-words.ts';
import type { Language } from '../catalogue/sentence.ts';
import { type EffortRow, effortRows, stationsPerDay } from '../effort.ts';
import { section } from '../html.ts';
import { htmlTable } from '../html-table.ts';
import { formatCount, formatShort } from '../numbers.ts';
import type { ReportInput } from '../report-input.ts';

export function effortSection(input: ReportInput, language: Language): string {
  const rows = input.surveys.toReversed().flatMap((survey) => {
    const own = effortRows(survey.inHand, survey.strata);
    return own.map((row, i) => ({ ...row, survey: survey.inHand.survey.name, whole: i === own.length - 1 }));
  });
  const last = input.surveys.at(-1);
  const days = last === undefined ? [] : stationsPerDay(last.inHand.stations);
  const byDay = htmlTable(
    [
      { head: 'Day', cell: (day) => day.date },
      { head: 'Stations', cell: (day) => formatCount(day.stations.length), number: true },
      { head: 'Which', cell: (day) => day.stations.join(', ') },
    ],
    days,
    { caption: `${last?.inHand.survey.name ?? ''}: stations of each day`, slim: true },
  );
  return section('effort', reportWords(language).effort, [effortTable(rows), byDay]);
}

type NamedRow = EffortRow & { readonly survey: string; readonly whole: boolean };

function effortTable(rows: readonly NamedRow[]): string {
  const count = (head: string, of: (row: EffortRow) => number) => ({
    head,
    cell: (row: EffortRow) => formatCount(of(row)),
    number: true,
  });
  return htmlTable(
    [
      { head: 'Stratum', cell: (row) => (row.whole ? 'All strata' : row.name) },
      {
        head: 'Area, ha',
        cell: (row) => (row.areaHa === null ? 'not known' : formatShort(row.areaHa)),
        number: true,
      },
      count('Stations', (row) => row.stations),
      count('Days', (row) => row.days),
      count('Belts searched', (row) => row.transectsSearched),
      count('Lost or not done', (row) => row.transectsLost),
      count('Blank', (row) => row.transectsBlank),
      count('Searched, m²', (row) => row.searchedAreaM2),
    ],
    rows,
    {
      caption: 'Stations and searched area by stratum',
      strong: (row) => row.whole,
      group: (row) => row.survey,
    },
  );
}
