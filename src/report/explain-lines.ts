/** Where a number comes from, line by line: stations, strata, sums, spread, interval, and what was left out. */

import type { ExplainedStation, ExplainedStratum, Explanation } from '../estimates/explain/explanation.ts';
import { counted } from '../survey/counted.ts';
import type { Reason } from '../survey/message.ts';
import type { Species } from '../survey/words.ts';
import { explainWords } from './catalogue/explain-words.ts';
import { sentence } from './catalogue/sentence.ts';
import { exact } from './exact-number.ts';
import { explainSteps } from './explain-steps.ts';
import { leftOutLines } from './left-out-lines.ts';
import { formatCount, formatShare } from './numbers.ts';
import { fullName, inPeoplesWords, speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';

export function explainLines(explanation: Explanation, species: readonly Species[]): readonly string[] {
  const { strata } = explanation;
  const nameOf = speciesNames(species);
  const said = (reason: Reason) => sentence('en', inPeoplesWords(reason, nameOf));
  return [
    headOf(explanation, fullName(nameOf(explanation.species))),
    answerLine(explanation, said),
    ...strata.flatMap((stratum) => ['', ...stratumLines(stratum, explanation)]),
    ...(strata.length === 0
      ? []
      : ['', 'Worked out', ...explainSteps(explanation).map((line) => `  ${line}`)]),
    ...leftOutSection(explanation),
    ...cautionLines(explanation, said),
  ];
}

function headOf({ of, scope, survey }: Explanation, name: string): string {
  const where = scope.by === 'survey' ? survey : `${survey}, ${scope.by} ${scope.name}`;
  return `${explainWords.figure[of]} of ${name}, ${where}`;
}

function answerLine(
  { of, value, unit, standardError, interval, confidence, reason }: Explanation,
  said: (reason: Reason) => string,
): string {
  if (value === null) return reason === null ? 'No figure.' : `No figure. ${said(reason)}.`;
  // The rows below make the error between stations; that of the weights is no sum over stations.
  const which = of === 'biomass' ? 'standard error between stations' : 'standard error';
  const spread = standardError === null ? ', no standard error' : `, ${which} ${exact(standardError)}`;
  const between =
    interval === null
      ? ''
      : `; ${formatShare(confidence)} sure between ${exact(interval[0])} and ${exact(interval[1])}`;
  return `${exact(value)} ${unit}${spread}${between}`;
}

function stratumLines(stratum: ExplainedStratum, { of, isWhole }: Explanation): readonly string[] {
  const area = stratum.areaHa === null ? 'area not known' : `${exact(stratum.areaHa)} ha`;
  const members = isWhole ? '' : `, ${formatCount(stratum.memberCount)} of them inside`;
  const stations = counted(formatCount(stratum.stationCount), 'station');
  return [
    `${stratum.stratum}: ${area}, ${stations}${members}${of === 'size' ? '' : `, ${estimatorWords[stratum.estimator]}`}`,
    ...textTable(stationColumns(stratum, of, isWhole), stratum.stations).split('\n'),
  ];
}

const estimatorWords = {
  'station mean': 'each station counts alike',
  'ratio of sums': 'animals and area added up, because some stations searched much less than planned',
} as const;

function stationColumns(
  { estimator }: ExplainedStratum,
  of: Explanation['of'],
  isWhole: boolean,
): readonly Column<ExplainedStation>[] {
  const number = true;
  const value = estimator === 'station mean' ? 'per ha' : 'residual variate per ha';
  return [
    { head: 'station', cell: ({ station }) => station },
    { head: 'date', cell: ({ date }) => date },
    ...(isWhole
      ? []
      : [{ head: 'inside', cell: ({ isMember }: ExplainedStation) => (isMember ? 'yes' : 'no') }]),
    { head: 'belts', cell: beltsInWords },
    { head: 'm²', cell: ({ searchedAreaM2 }) => exact(searchedAreaM2), number },
    { head: 'animals', cell: ({ animals }) => formatCount(animals), number },
    ...(of === 'biomass'
      ? [{ head: 'grams', cell: ({ amount }: ExplainedStation) => exact(amount), number }]
      : []),
    ...(of === 'size'
      ? [
          { head: 'measured', cell: measuredOf, number },
          {
            head: 'animals stood for',
            cell: ({ weightedAnimals }: ExplainedStation) => exact(weightedAnimals ?? 0),
            number,
          },
          { head: 'their mean mm', cell: meanLength, number },
        ]
      : [{ head: value, cell: ({ valuePerHa }: ExplainedStation) => exact(valuePerHa ?? 0), number }]),
  ];
}

/** "1: 3, 2: 0, 3: lost": the count of each belt, or why it has none. */
function beltsInWords({ belts }: ExplainedStation): string {
  return belts
    .map(
      ({ transect, state, animals }) =>
        `${transect}: ${state === 'counted' || state === 'zero' ? formatCount(animals) : state}`,
    )
    .join(', ');
}

function measuredOf({ belts }: ExplainedStation): string {
  return formatCount(belts.reduce((total, belt) => total + belt.measured, 0));
}

function meanLength({ amount, weightedAnimals }: ExplainedStation): string {
  return weightedAnimals === null || weightedAnimals === 0 ? '–' : exact(amount / weightedAnimals);
}

function leftOutSection({ leftOut }: Explanation): readonly string[] {
  if (leftOut.length === 0) return ['', explainWords.nothingLeftOut];
  return leftOutLines([{ leftOut }]);
}

function cautionLines({ cautions }: Explanation, said: (reason: Reason) => string): readonly string[] {
  const lines = [...new Set(cautions.map(said))];
  return lines.length === 0 ? [] : ['', 'To be read with it', ...lines.map((line) => `  ${line}`)];
}
