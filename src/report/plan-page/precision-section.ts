/** What precision a plan promises, and what it costs; or why neither is known. */

import { paragraph, section } from '../html.ts';
import { formatCount, formatShort } from '../numbers.ts';
import type { PlanPageInput } from './plan-page-input.ts';
import { precisionTable } from './plan-tables.ts';
import { planPageWords as words } from './plan-words.ts';

export function precisionSection(input: PlanPageInput): string {
  const { precision } = input;
  const known =
    precision.reason === null
      ? [
          precisionTable(input),
          ...(precision.unseen.length === 0
            ? []
            : [
                paragraph(
                  `Never met in ${precision.pilot}, so nothing can be promised: ${precision.unseen.join(', ')}.`,
                  'quiet',
                ),
              ]),
        ]
      : [
          paragraph(
            `Not known without a pilot: ${precision.reason}${precision.pilot === null ? '' : ` (${precision.pilot})`}.`,
            'question',
          ),
        ];
  return section('precision', words.precision, [...known, paragraph(costInWords(input))]);
}

function costInWords({ content, stationsPerDay, dayCost }: PlanPageInput): string {
  const stations = content.stations.filter(({ role }) => role === 'planned').length;
  if (stationsPerDay === null)
    return `What it costs is not known: nobody said how many of the ${formatCount(stations)} stations a boat works in a day.`;
  const days = Math.ceil(stations / stationsPerDay);
  const money = dayCost === null ? '' : `, ${formatShort(days * dayCost)} at ${formatShort(dayCost)} a day`;
  return `${formatCount(stations)} stations at ${formatShort(stationsPerDay)} a day are ${days === 1 ? '1 boat day' : `${formatCount(days)} boat days`}${money}; days lost to weather come on top.`;
}
