/** Does it stand? The answer first; every other way of making it below, where one species is asked for. */

import type {
  SensitivityAnswer,
  StationInfluence,
  Variant,
} from '../estimates/sensitivity/sensitivity-answer.ts';
import type { Interval } from '../estimates/shapes.ts';
import type { Species } from '../survey/words.ts';
import { sensitivityPhrases } from './catalogue/sensitivity-phrases.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { formatCount, formatInterval, formatShare, formatSignificant } from './numbers.ts';
import { fullName, reasonInPeoplesWords, speciesNames } from './species-names.ts';
import { formatChance, referenceInWords } from './status-words.ts';
import { type Column, textTable } from './text-table.ts';

interface SensitivityWords {
  readonly confidence: number;
  readonly species: readonly Species[];
  /** Open questions about stations of the survey. */
  readonly questions: number;
}

export function sensitivityLines(
  given: readonly SensitivityAnswer[],
  words: SensitivityWords,
): readonly string[] {
  const nameOf = speciesNames(words.species);
  const answers = given.map((one) => ({ ...one, reason: reasonInPeoplesWords(one.reason, nameOf) }));
  const survey = answers[0]?.density.survey ?? '';
  const blocks = answers.flatMap((answer) => [
    '',
    fullName(nameOf(answer.density.species)),
    ...sensitivitySentences(answer).map((text) => `  ${text}`),
    ...(answers.length === 1 ? detail(answer, words) : []),
  ]);
  const asked =
    words.questions === 0
      ? 'No question about a station is open.'
      : `Questions open about stations: ${formatCount(words.questions)} (slateline check lists them).`;
  const more = answers.length > 1 ? ['Every other way of making it: name one with --species.'] : [];
  return [survey, ...blocks, '', asked, ...more];
}

/** What a reader needs first: whether it stands, on what it rests, how far it moves, and whether the statement turns. */
export function sensitivitySentences(answer: SensitivityAnswer): readonly string[] {
  if (answer.reason !== null || answer.lowest === null) return [standingSentence(answer)];
  return [standingSentence(answer), rangeSentence(answer), ...referenceSentences(answer)];
}

/** The first of them. */
function standingSentence(answer: SensitivityAnswer): string {
  const { reason, stations, lowest, highest } = answer;
  const words = sensitivityPhrases('en');
  if (reason !== null) return words.nothingToTry(sentence('en', reason));
  const [most] = stations;
  if (most === undefined || lowest === null || highest === null) return words.oneEach;
  return headline(answer, most);
}

function rangeSentence({ density, lowest, highest }: SensitivityAnswer): string {
  const { range, without } = sensitivityPhrases('en');
  const made = (one: StationInfluence) => without(formatSignificant(one.densityPerHa), one.station);
  return range(formatSignificant(density.densityPerHa!), made(lowest!), made(highest!));
}

function headline({ verdict, density }: SensitivityAnswer, most: StationInfluence): string {
  const words = sensitivityPhrases('en');
  const holds = words.holds(
    most,
    formatShare(most.shareOfAnimals),
    formatCount(most.animals),
    formatCount(density.animals),
  );
  const moves =
    most.densityPerHa === 0
      ? words.noneWithout
      : words.moves(formatSignificant(most.densityPerHa), changeInWords(most.change));
  if (verdict === 'rests') return words.rests(holds, moves);
  if (verdict === 'leans') return words.leans(holds, moves);
  return words.stands(most.station, moves);
}

export function changeInWords(change: number, language: Language = 'en'): string {
  const words = sensitivityPhrases(language);
  if (Math.abs(change) < 0.005) return words.noDifferent;
  const share = formatShare(Math.abs(change));
  return change < 0 ? words.less(share) : words.more(share);
}

function referenceSentences({
  reference,
  referenceHeld,
  said,
  turned,
}: SensitivityAnswer): readonly string[] {
  if (reference === null) return [];
  const against = referenceInWords(reference);
  if (referenceHeld !== null) return [`Not compared with ${against}. ${sentence('en', referenceHeld)}.`];
  if (said === null) return [];
  const statement = `“${said.statusClass}” ${against} (chance of being below ${formatChance(said.probabilityBelow)})`;
  return [
    turned.length === 0
      ? `The statement ${statement} stays, whichever station is left out and however it is made.`
      : `The statement ${statement} turns: ${turned.map(turnedName).join(', ')}.`,
  ];
}

function turnedName(name: string): string {
  const variant = variantNames[name as Variant['kind']];
  return variant ?? `without ${name}`;
}

function detail(answer: SensitivityAnswer, words: SensitivityWords): readonly string[] {
  if (answer.reason !== null) return [];
  return ['', ...variantTable(answer, words), '', ...stationTable(answer), ...variantReasons(answer)];
}

interface Row {
  readonly name: string;
  readonly perHa: number | null;
  readonly interval: Interval | null;
  readonly said: SensitivityAnswer['said'];
}

function variantTable(answer: SensitivityAnswer, { confidence }: SensitivityWords): readonly string[] {
  const { density, said, variants, reference, referenceHeld } = answer;
  const rows: readonly Row[] = [
    { name: 'as it is', perHa: density.densityPerHa, interval: density.intervalPerHa, said },
    ...variants.map((one) => ({
      name: variantName(one),
      perHa: one.densityPerHa,
      interval: one.intervalPerHa,
      said: one.said,
    })),
  ];
  const columns: readonly Column<Row>[] = [
    { head: 'made otherwise', cell: ({ name }) => name },
    { head: 'per ha', cell: ({ perHa }) => (perHa === null ? '–' : formatSignificant(perHa)), number: true },
    {
      head: `${formatShare(confidence)} interval`,
      cell: ({ interval }) => intervalInWords(interval),
      number: true,
    },
    ...(reference === null || referenceHeld !== null
      ? []
      : [
          {
            head: 'chance of being below',
            cell: (row: Row) =>
              row.said === null ? '–' : `${formatChance(row.said.probabilityBelow)} ${row.said.statusClass}`,
          },
        ]),
  ];
  return textTable(columns, rows).split('\n');
}

function intervalInWords(interval: Interval | null): string {
  return interval === null ? '–' : formatInterval(interval);
}

const variantNames: Readonly<Record<Variant['kind'], string>> = {
  'without-station': 'without one station',
  'without-questioned': 'without what is in question',
  'house-prior': 'clumping by the prior of the house, earlier surveys forgotten',
  'wide-prior': 'clumping by a prior half as wide again',
  lognormal: 'log-normal interval, by the design',
  t: 't interval, by the design',
  percentile: 'bootstrap of stations, percentile',
};

function variantName({ kind, stations }: Variant): string {
  if (kind === 'without-station') return `without ${stations.join(', ')}`;
  if (kind !== 'without-questioned') return variantNames[kind];
  const named = stations.length <= 4 ? stations.join(', ') : `${stations.length} stations`;
  return `without what is in question (${named})`;
}

const stationsShown = 5;

function stationTable({ stations, density, reference, referenceHeld }: SensitivityAnswer): readonly string[] {
  const columns: readonly Column<StationInfluence>[] = [
    { head: 'left out', cell: ({ station }) => station },
    { head: 'stratum', cell: ({ stratum }) => stratum },
    { head: 'animals', cell: ({ animals }) => formatCount(animals), number: true },
    { head: 'of all', cell: ({ shareOfAnimals }) => formatShare(shareOfAnimals), number: true },
    { head: 'per ha without it', cell: ({ densityPerHa }) => formatSignificant(densityPerHa), number: true },
    { head: 'change', cell: ({ change }) => changeInWords(change), number: true },
    ...(reference === null || referenceHeld !== null
      ? []
      : [
          {
            head: 'by the design',
            cell: ({ said }: StationInfluence) =>
              said === null ? '–' : `${formatChance(said.probabilityBelow)} ${said.statusClass}`,
          },
        ]),
  ];
  const rest = stations.length - stationsShown;
  const others =
    rest > 0
      ? [`  and ${formatCount(rest)} more of ${formatCount(density.stations)}, each with less effect`]
      : [];
  return [...textTable(columns, stations.slice(0, stationsShown)).split('\n'), ...others];
}

function variantReasons({ variants }: SensitivityAnswer): readonly string[] {
  const told = variants
    .filter((one) => one.reason !== null)
    .map((one) => `  ${variantName(one)}: ${sentence('en', one.reason!)}.`);
  return told.length === 0 ? [] : ['', ...told];
}
