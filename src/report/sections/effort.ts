/** What was done, by stratum and by day. */

import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import type { Language } from '../catalogue/sentence.ts';
import { type EffortRow, effortRows, stationsPerDay } from '../effort.ts';
import { paragraph, section } from '../html.ts';
import { htmlTable } from '../html-table.ts';
import { formatCount, formatShort } from '../numbers.ts';
import { planAgainstSentence } from '../plan-against-lines.ts';
import type { ReportInput } from '../report-input.ts';

export function effortSection(input: ReportInput, language: Language): string {
  const rows = input.surveys.toReversed().flatMap((survey) => {
    const own = effortRows(survey.inHand, survey.strata);
    return own.map((row, i) => ({ ...row, survey: survey.inHand.survey.name, whole: i === own.length - 1 }));
  });
  const { heads, effort } = reportPhrases(language);
  const last = input.surveys.at(-1);
  const days = last === undefined ? [] : stationsPerDay(last.inHand.stations);
  const byDay = htmlTable(
    [
      { head: heads.day, cell: (day) => day.date },
      { head: heads.stations, cell: (day) => formatCount(day.stations.length), number: true },
      { head: heads.which, cell: (day) => day.stations.join(', ') },
    ],
    days,
    { caption: effort.byDay(last?.inHand.survey.name ?? ''), slim: true },
  );
  return section('effort', reportWords(language).effort, [
    ...planned(input, language),
    effortTable(rows, language),
    byDay,
  ]);
}

/** Planned, visited, replaced: what an answer rests on begins with what was meant to be done. */
function planned({ plan, surveys }: ReportInput, language: Language): readonly string[] {
  if (plan === undefined) return [];
  const { effort } = reportPhrases(language);
  const { notInPlan, strata } = plan.against;
  const missing = strata.flatMap(({ notVisited }) => notVisited);
  const not = missing.length === 0 ? '' : effort.notVisited(codesInWords(missing, effort.andMore));
  const strangers = notInPlan.length === 0 ? '' : effort.notInPlan(codesInWords(notInPlan, effort.andMore));
  const survey = surveys.at(-1)?.inHand.survey.name ?? '';
  const told = `${planAgainstSentence(plan.against, language)}${not}${strangers}`;
  return [paragraph(effort.ofPlan(survey, plan.name, told))];
}

/** A dozen can be read; more are a matter for the plan page. */
function codesInWords(codes: readonly string[], andMore: (codes: string, n: string) => string): string {
  if (codes.length <= 12) return codes.join(', ');
  return andMore(codes.slice(0, 12).join(', '), formatCount(codes.length - 12));
}

type NamedRow = EffortRow & { readonly survey: string; readonly whole: boolean };

function effortTable(rows: readonly NamedRow[], language: Language): string {
  const { heads, effort } = reportPhrases(language);
  const count = (head: string, of: (row: EffortRow) => number) => ({
    head,
    cell: (row: EffortRow) => formatCount(of(row)),
    number: true,
  });
  return htmlTable(
    [
      { head: heads.stratum, cell: (row) => (row.whole ? effort.allStrata : row.name) },
      {
        head: heads.areaHa,
        cell: (row) => (row.areaHa === null ? effort.notKnown : formatShort(row.areaHa, language)),
        number: true,
      },
      count(heads.stations, (row) => row.stations),
      count(heads.days, (row) => row.days),
      count(heads.beltsSearched, (row) => row.transectsSearched),
      count(heads.lost, (row) => row.transectsLost),
      count(heads.blank, (row) => row.transectsBlank),
      count(heads.searchedM2, (row) => row.searchedAreaM2),
    ],
    rows,
    {
      caption: effort.byStratum,
      strong: (row) => row.whole,
      group: (row) => row.survey,
    },
  );
}
