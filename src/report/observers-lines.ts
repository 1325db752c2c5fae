/** The divers as text: the answer first, then who worked where and who rounds. */

import type { LengthCalibration } from '../estimates/observers/length-calibration.ts';
import type { MarkedByTwo } from '../estimates/observers/marked-by-two.ts';
import type { RecordersByStratum } from '../estimates/observers/recorders-by-stratum.ts';
import type { SwimsCompared } from '../estimates/observers/two-swims.ts';
import type { Reason } from '../survey/message.ts';
import type { Species } from '../survey/words.ts';
import { sentence } from './catalogue/sentence.ts';
import { formatCount, formatShare, formatSignificant } from './numbers.ts';
import { speciesNames } from './species-names.ts';
import { textTable } from './text-table.ts';

type Swims = SwimsCompared & { readonly species: string | null };

interface ObserversToSay {
  readonly survey: string;
  readonly swims: readonly Swims[];
  readonly digits: readonly {
    readonly recorder: string;
    readonly lengths: number;
    readonly preference: { readonly shareOfZeroAndFive: number; readonly isPreferred: boolean } | null;
  }[];
  readonly strata: RecordersByStratum;
  readonly leftOut: readonly Reason[];
}

export function observersLines(
  answers: readonly ObserversToSay[],
  species: readonly Species[],
): readonly string[] {
  const nameOf = speciesNames(species);
  const label = (one: string | null) => (one === null ? 'all species together' : nameOf(one).label);
  return answers.flatMap((answer, i) => [
    ...(i > 0 ? [''] : []),
    answer.survey,
    ...swimLines(answer.swims, label),
    ...answer.leftOut.map((reason) => `  ${sentence('en', reason)}`),
    ...digitLines(answer.digits),
    ...stratumLines(answer.strata),
  ]);
}

function swimLines(swims: readonly Swims[], label: (species: string | null) => string): readonly string[] {
  if (swims.every(({ beltsSwumTwice }) => beltsSwumTwice === 0))
    return ['  No belt was swum by a second diver (swim 2): how alike the divers count is not known'];
  const told = swims.filter(({ ratio }) => ratio !== null);
  return [
    `  ${sentence('en', { code: 'observers-no-person', parameters: {} })}`,
    ...told.flatMap((one) => swimAnswer(one, label(one.species))),
    ...alike(told, label),
    ...tooFew(swims, label),
    ...(told.length === 0 ? [] : swimTable(told, label)),
  ];
}

function swimAnswer({ ratio, beltsCompared }: Swims, name: string): readonly string[] {
  if (ratio === null) return [];
  return [
    `  ${name}: the second diver counted ${times(ratio.limits)} times the first on single belts, ${plain(ratio.ratio)} times${ratio.ratioInterval === null ? '' : ` (${times(ratio.ratioInterval)})`} on the middle one (${beltsCompared} belts of ${ratio.stations} station${ratio.stations === 1 ? '' : 's'})`,
  ];
}

/** Each caution once, with the species it is about; belts where neither saw any have a column. */
function alike(told: readonly Swims[], label: (species: string | null) => string): readonly string[] {
  const about = new Map<string, string[]>();
  for (const { species, cautions } of told) {
    for (const caution of cautions) {
      if (caution.code === 'observers-neither-saw') continue;
      const said = sentence('en', caution);
      about.set(said, [...(about.get(said) ?? []), label(species)]);
    }
  }
  return [...about].map(([said, names]) => `  ${said}: ${names.join(', ')}`);
}

/** One line for all of them: eleven alike say no more than one. */
function tooFew(swims: readonly Swims[], label: (species: string | null) => string): readonly string[] {
  const few = swims.filter(({ reason }) => reason !== null);
  if (few.length === 1 && swims.length === 1) return few.map(({ reason }) => `  ${sentence('en', reason!)}`);
  if (few.length === 0) return [];
  const names = few.map(({ species, beltsCompared }) => `${label(species)} (${beltsCompared})`).join(', ');
  return [`  Seen on under 3 belts that were swum twice, too few for limits: ${names}`];
}

function swimTable(swims: readonly Swims[], label: (species: string | null) => string): readonly string[] {
  return textTable(
    [
      { head: '  counted twice', cell: (one) => `  ${label(one.species)}` },
      { head: 'belts', cell: (one) => formatCount(one.beltsCompared), number: true },
      {
        head: 'neither saw any',
        cell: (one) => formatCount(one.beltsSwumTwice - one.beltsCompared),
        number: true,
      },
      { head: 'first', cell: (one) => formatCount(one.firstAnimals), number: true },
      { head: 'second', cell: (one) => formatCount(one.secondAnimals), number: true },
      { head: 'second less first, animals/belt', cell: differenceOf },
      { head: 'agreement ICC(2,1)', cell: agreementOf },
    ],
    swims,
  ).split('\n');
}

function differenceOf({ difference }: Swims): string {
  if (difference === null) return '–';
  const [low, high] = difference.limits;
  return `${signed(difference.bias)} (limits ${signed(low)} to ${signed(high)})`;
}

function agreementOf({ agreement }: Swims): string {
  if (agreement === null) return '–';
  const [low, high] = agreement.absoluteInterval;
  return `${plain(agreement.absolute)} (${plain(low)} to ${plain(high)})`;
}

function digitLines(digits: ObserversToSay['digits']): readonly string[] {
  const told = digits.filter(({ lengths }) => lengths > 0);
  if (told.length === 0) return [];
  const lines = textTable(
    [
      { head: '  recorder of the station', cell: (one) => `  ${one.recorder || 'nobody named'}` },
      { head: 'lengths', cell: (one) => formatCount(one.lengths), number: true },
      {
        head: 'end in 0 or 5',
        cell: (one) => (one.preference === null ? '–' : formatShare(one.preference.shareOfZeroAndFive)),
        number: true,
      },
      {
        head: 'rounds',
        cell: ({ preference }) =>
          preference === null ? 'under 100 lengths' : preference.isPreferred ? 'yes' : 'no',
      },
    ],
    told,
  );
  return ['', ...lines.split('\n')];
}

function stratumLines({ strata, recorders, cautions }: RecordersByStratum): readonly string[] {
  const lines = textTable(
    [
      { head: '  stations by', cell: (one: RecordersByStratum['recorders'][number]) => `  ${one.recorder}` },
      ...strata.map((stratum, i) => ({
        head: stratum,
        cell: (one: RecordersByStratum['recorders'][number]) => formatCount(one.stations[i]!),
        number: true,
      })),
    ],
    recorders,
  );
  const table = recorders.length === 0 ? [] : ['', ...lines.split('\n')];
  return [...table, ...cautions.map((caution) => `  ${sentence('en', caution)}`)];
}

interface ToSayOfLengths {
  readonly observer: string;
  readonly pieces: number;
  readonly calibration: LengthCalibration | null;
}

/** Estimated against known lengths; the pass mark in millimetres, or null. */
export function calibrationLines(
  answers: readonly ToSayOfLengths[],
  passMarkMm: number | null,
): readonly string[] {
  const mark =
    passMarkMm === null
      ? 'No pass mark was given (--pass-mark): nobody passes or fails'
      : `Pass mark, chosen by the officer: both limits within ${formatSignificant(passMarkMm)} mm`;
  const lines = textTable(
    [
      { head: 'observer', cell: (one) => one.observer },
      { head: 'pieces', cell: (one) => formatCount(one.pieces), number: true },
      { head: 'bias mm', cell: ({ calibration: c }) => (c === null ? '–' : signed(c.biasMm)), number: true },
      {
        head: 'sd mm',
        cell: ({ calibration: c }) => (c === null ? '–' : plain(c.standardDeviationMm)),
        number: true,
      },
      {
        head: 'limits mm',
        cell: ({ calibration: c }) =>
          c === null ? 'under 3 pieces' : `${signed(c.limitsMm[0])} to ${signed(c.limitsMm[1])}`,
      },
      {
        head: 'mm per mm',
        cell: ({ calibration: c }) => (c?.slope == null ? '–' : plain(c.slope)),
        number: true,
      },
      {
        head: 'within mark',
        cell: ({ calibration: c }) => (c?.shareWithin == null ? '–' : formatShare(c.shareWithin)),
        number: true,
      },
      { head: 'passes', cell: ({ calibration: c }) => (c?.passes == null ? '–' : c.passes ? 'yes' : 'no') },
    ],
    answers,
  );
  return [mark, ...lines.split('\n')];
}

export function detectionLines(found: MarkedByTwo, bothSaw: number): readonly string[] {
  const [low, high] = found.interval;
  const share = (one: number | null) => (one === null ? 'not known' : formatShare(one));
  if (bothSaw === 0) return [nothingInCommon(found), matchedOnly];
  return [
    `About ${formatSignificant(found.animals)} animals that could be seen (95 % interval ${formatSignificant(low)} to ${formatSignificant(high)}); ${formatCount(found.seen)} were seen by one or both`,
    `The first diver sees ${share(found.firstDetects)} of them, the second ${share(found.secondDetects)}, both together ${share(found.eitherDetects)}`,
    matchedOnly,
  ];
}

const matchedOnly =
  'Right only if animals were matched one by one by their place along the tape; those buried or in crevices are outside';

/** The formula still gives a number and an interval; both would be read. */
function nothingInCommon({ seen }: MarkedByTwo): string {
  return `No animal was seen by both, so how many could be seen and what share a diver sees cannot be told: at least the ${formatCount(seen)} that one of them saw`;
}

function times([low, high]: readonly [number, number]): string {
  const ends = [low < 0.01 ? 'under 0.01' : plain(low), high > 100 ? 'over 100' : plain(high)];
  return ends.join(' to ');
}

function plain(value: number): string {
  return Math.abs(value) < 0.005 ? '0' : formatSignificant(value, 2);
}

function signed(value: number): string {
  const text = plain(value);
  return value < 0 || text === '0' ? text : `+${text}`;
}
