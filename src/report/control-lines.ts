/** Before, after, impact, control as text. */

import type { Contrast } from '../estimates/change/two-means.ts';
import type { Species } from '../survey/words.ts';
import { formatShare, formatSignificant } from './numbers.ts';
import { speciesNames } from './species-names.ts';

export interface ControlToSay {
  readonly species: string;
  readonly impact: string;
  readonly control: string;
  readonly stations: readonly [number, number, number, number];
  readonly told: 'more' | 'less' | 'cannot tell';
  readonly contrast: Contrast;
  readonly logRatioOfRatios: Contrast | null;
  readonly unlikeStrata: readonly string[];
}

export function controlLines(
  answers: readonly ControlToSay[],
  words: { readonly confidence: number; readonly species: readonly Species[] },
): readonly string[] {
  if (answers.length === 0) return [];
  const nameOf = speciesNames(words.species);
  return [
    '',
    ...answers.map((one) => controlLine(nameOf(one.species).label, one, words.confidence)),
    '  One control cannot prove cause: whatever else happened to one of the two places alone looks the same.',
    ...(answers[0]!.unlikeStrata.length === 0
      ? []
      : [
          `  The places differ in strata (${answers[0]!.unlikeStrata.join(', ')}), and stations count alike whatever their stratum.`,
        ]),
  ];
}

function controlLine(species: string, answer: ControlToSay, confidence: number): string {
  const { impact, control, told, contrast, logRatioOfRatios, stations } = answer;
  const words =
    told === 'cannot tell'
      ? `cannot tell whether ${impact} changed otherwise than ${control}`
      : `${impact} gained ${told} than ${control}`;
  const interval =
    contrast.interval === null
      ? 'no interval'
      : `${formatShare(confidence)} interval ${contrast.interval.map((end) => signed(end)).join(' to ')}`;
  const ratio =
    logRatioOfRatios === null
      ? ''
      : `; ratio of ratios ${formatSignificant(Math.exp(logRatioOfRatios.value), 2)}${
          logRatioOfRatios.interval === null
            ? ''
            : ` (${logRatioOfRatios.interval.map((end) => formatSignificant(Math.exp(end), 2)).join(' to ')})`
        }`;
  return `${species}: ${words}: ${signed(contrast.value)} per ha (${interval})${ratio}; stations ${stations.slice(0, 2).join(' → ')} and ${stations.slice(2).join(' → ')}.`;
}

function signed(value: number): string {
  return `${value < 0 ? '−' : '+'}${formatSignificant(Math.abs(value), 2)}`;
}
