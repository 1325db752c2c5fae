/** A plan of the book for the command line: what it asks of each stratum, then its stations in the order of the list. */

import { type DrawMethod, planCounts } from '../planning/draw/drawn-plan.ts';
import { mostRemembered } from '../planning/draw/spaced-stations.ts';
import type { PlanContent, PlannedStation } from '../survey/plan-words.ts';
import { writePosition } from '../survey/position-notation.ts';
import { formatCount, formatHectares, formatShare, formatShort, formatSignificant } from './numbers.ts';
import { textTable } from './text-table.ts';

export const methodWords: Readonly<Record<DrawMethod, string>> = {
  acceptance: 'spread random positions (balanced acceptance sampling)',
  pivotal: 'spread random positions (local pivotal method)',
};

/** The whole plan; stations without their spares when there are many. */
export function planLines(name: string, content: PlanContent): readonly string[] {
  return [
    ...planHeadLines(name, content),
    '',
    stratumTable(content),
    ...spreadLines(content),
    '',
    stationTable(content),
    ...replacementLines(content),
  ];
}

export function planHeadLines(name: string, content: PlanContent): readonly string[] {
  const { survey, decision, drawnOn, drawnBy, seed, minimumSpacingM, laid } = content;
  const rows = stratumRows(content);
  const drawn = rows.reduce((sum, row) => sum + row.planned, 0);
  const picked = rows.reduce((sum, row) => sum + row.handPicked, 0);
  const apart = minimumSpacingM === null ? '' : `, at least ${formatShort(minimumSpacingM)} m apart`;
  return [
    `Plan ${name}${survey === null ? '' : ` for ${survey}`}${drawn === 1 ? ': 1 station' : `: ${formatCount(drawn)} stations`}${picked === 0 ? '' : ` and ${formatCount(picked)} hand-picked`} in ${strataInWords(rows.length)}.`,
    ...(decision === null ? [] : [`To decide: ${decision}`]),
    `Drawn on ${drawnOn} by ${drawnBy}: ${methodWords[content.method]}${apart}; seed ${String(seed)}.`,
    ...(content.allocation === undefined ? [] : [`${content.allocation}.`]),
    ...(content.revisits === undefined ? [] : [`Fixed stations are those of ${content.revisits}.`]),
    ...(laid === null
      ? []
      : [
          `Belts laid on ${laid.on} for ${laid.forDate}: ${formatCount(laid.belts)} of ${formatShort(laid.beltLengthM)} m with ${formatShort(laid.gapM)} m between${laid.beltWidthM === null ? '' : `, ${formatShort(laid.beltWidthM)} m wide`}; ${modelInWords(laid)}.`,
        ]),
  ];
}

export function modelInWords(laid: NonNullable<PlanContent['laid']>): string {
  const valid =
    laid.validFromYear === undefined ? '' : ` (holds from ${laid.validFromYear} to ${laid.validToYear})`;
  return `declination by ${laid.declinationModel}${valid}`;
}

function strataInWords(n: number): string {
  return n === 1 ? '1 stratum' : `${formatCount(n)} strata`;
}

export type PlanStratumRow = PlanContent['strata'][number] & {
  readonly planned: number;
  readonly fixed: number;
  readonly handPicked: number;
  readonly replaced: number;
  readonly sparesLeft: number;
};

/** What the plan holds of each stratum now, after its replacements. */
export function stratumRows(content: PlanContent): readonly PlanStratumRow[] {
  const { seed, method, minimumSpacingM, stations, passedOver, strata } = content;
  const replacements = content.replacements.map((one) => ({ ...one, replacement: one.replacement ?? '' }));
  const counts = planCounts({ seed, method, minimumSpacingM, stations, passedOver, replacements });
  const none = { planned: 0, fixed: 0, handPicked: 0, replaced: 0, sparesLeft: 0 };
  return strata.map((stratum) => ({
    ...stratum,
    ...(counts.find((one) => one.stratum === stratum.name) ?? none),
  }));
}

function stratumTable(content: PlanContent): string {
  const rows = stratumRows(content);
  const whole = rows.reduce((sum, row) => sum + row.areaHa, 0);
  const count = (head: string, of: (row: PlanStratumRow) => number) => ({
    head,
    cell: (row: PlanStratumRow) => formatCount(of(row)),
    number: true,
  });
  return textTable<PlanStratumRow>(
    [
      { head: 'stratum', cell: ({ name }) => name },
      { head: 'ha', cell: ({ areaHa }) => formatHectares(areaHa), number: true },
      { head: 'W', cell: ({ areaHa }) => (areaHa / whole).toFixed(2), number: true },
      { head: 'masked ha', cell: ({ maskedHa }) => formatHectares(maskedHa), number: true },
      count('stations', (row) => row.planned),
      count('of them fixed', (row) => row.fixed),
      count('hand-picked', (row) => row.handPicked),
      count('replaced', (row) => row.replaced),
      count('spares left', (row) => row.sparesLeft),
    ],
    rows,
  );
}

/** Spread over the ground, and what the spacing did; sentences, because the numbers mean little alone. */
export function spreadLines(content: PlanContent): readonly string[] {
  const balances = content.strata.flatMap(({ name, balance }) =>
    balance === undefined
      ? []
      : [
          `  ${name}: ${formatSignificant(balance.drawn, 2)}, simple random ${formatSignificant(balance.simpleRandom, 2)} on average; ${formatShare(balance.shareAsGood)} of ${formatCount(balance.simpleDraws)} such draws are spread as well`,
        ],
  );
  const spacings = content.strata.flatMap(({ name, spacing }) =>
    spacing === undefined
      ? []
      : [
          `  ${name}: from ${formatSignificant(spacing.lowestRatio, 2)} to ${formatSignificant(spacing.highestRatio, 2)} times the chance it would have without; what is within 1 ± ${formatSignificant(3 * spacing.noise, 2)} may be luck of the ${formatCount(spacing.redraws)} redraws${spacing.failed === 0 ? '' : ` (${formatCount(spacing.failed)} of them left without room)`}`,
        ],
  );
  const passed = content.passedOver.length;
  return [
    ...(balances.length === 0
      ? []
      : ['', 'Spread over the ground (0: every station stands for the same ground):', ...balances]),
    ...(content.minimumSpacingM === null
      ? []
      : ['', `At least ${formatShort(content.minimumSpacingM)} m apart: ${passedInWords(passed)}.`]),
    ...(spacings.length === 0 ? [] : ['With that spacing a place of the ground is chosen:', ...spacings]),
    ...(spacings.length > 0 && content.stations.some(isGiven)
      ? ['  Near a fixed or hand-picked station the chance falls to 0: no new one is drawn there.']
      : []),
  ];
}

function passedInWords(passed: number): string {
  if (passed === 0) return 'no position was passed over';
  if (passed === 1) return '1 position was passed over as too near to another';
  const count = `${formatCount(passed)}${passed >= mostRemembered ? ' and more' : ''}`;
  return `${count} positions were passed over as too near to another`;
}

function isGiven({ selection }: PlannedStation): boolean {
  return selection !== 'random';
}

export const selectionWords: Readonly<Record<PlannedStation['selection'], string>> = {
  random: 'random',
  fixed: 'fixed',
  'hand-picked': 'hand-picked',
};

export function roleInWords({ role, replaces }: PlannedStation): string {
  if (role === 'planned') return replaces === null ? '' : `in place of ${replaces}`;
  return role === 'spare' ? 'spare' : 'dropped';
}

function stationTable(content: PlanContent): string {
  const isLaid = content.laid !== null;
  const stations = [
    ...content.stations.filter(({ role }) => role === 'planned'),
    ...content.stations.filter(({ role }) => role === 'spare'),
    ...content.stations.filter(({ role }) => role === 'dropped'),
  ];
  return textTable<PlannedStation>(
    [
      { head: 'station', cell: ({ code }) => code },
      { head: 'stratum', cell: ({ stratum }) => stratum },
      { head: 'chosen', cell: ({ selection }) => selectionWords[selection] },
      { head: 'now', cell: roleInWords },
      { head: 'position (WGS84)', cell: ({ position }) => writePosition(position) },
      ...(isLaid
        ? [
            { head: 'true', cell: (one: PlannedStation) => bearing(one, 'trueBearingDeg'), number: true },
            {
              head: 'compass',
              cell: (one: PlannedStation) => bearing(one, 'magneticBearingDeg'),
              number: true,
            },
            {
              head: 'inside',
              cell: ({ shareInside }: PlannedStation) =>
                shareInside === null ? '' : formatShare(shareInside),
              number: true,
            },
          ]
        : []),
    ],
    stations,
  );
}

/** "013°"; with the last bearing too where the series turns. */
export function bearing(
  { belts }: Pick<PlannedStation, 'belts'>,
  kind: 'trueBearingDeg' | 'magneticBearingDeg',
): string {
  const [first] = belts;
  if (first === undefined) return '';
  const last = belts.at(-1)!;
  const words = bearingInWords(first[kind]);
  return last[kind] === first[kind] ? words : `${words} to ${bearingInWords(last[kind])}`;
}

/** Whole degrees: a compass on a slate shows no more. 359.6 is 000. */
export function bearingInWords(degrees: number): string {
  return `${String(Math.round(degrees) % 360).padStart(3, '0')}°`;
}

function replacementLines({ replacements }: PlanContent): readonly string[] {
  if (replacements.length === 0) return [];
  return [
    '',
    'Replaced:',
    ...replacements.map(
      ({ dropped, replacement, reason, who, date }) =>
        `  ${dropped} by ${replacement ?? 'none: no spare was left'}: ${reason} (${who}, ${date})`,
    ),
  ];
}
