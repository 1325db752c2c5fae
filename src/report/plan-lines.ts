/** A plan of the book for the command line: what it asks of each stratum, then its stations in the order of the list. */

import { planCounts } from '../planning/draw/drawn-plan.ts';
import { counted } from '../survey/counted.ts';
import type { PlanContent, PlannedStation } from '../survey/plan-words.ts';
import { writePosition } from '../survey/position-notation.ts';
import type { Language } from './catalogue/language.ts';
import { planPhrases } from './catalogue/plan-phrases.ts';
import { formatCount, formatHectares, formatShare, formatShort } from './numbers.ts';
import { spreadLines } from './plan-spread-lines.ts';
import { textTable } from './text-table.ts';

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
    `Plan ${name}${survey === null ? '' : ` for ${survey}`}: ${counted(formatCount(drawn), 'station')}${picked === 0 ? '' : ` and ${formatCount(picked)} hand-picked`} in ${strataInWords(rows.length)}.`,
    ...(decision === null ? [] : [`To decide: ${decision}`]),
    `Drawn on ${drawnOn} by ${drawnBy}: ${planPhrases('en').methods[content.method]}${apart}; seed ${String(seed)}.`,
    ...(content.allocation === undefined ? [] : [`${content.allocation}.`]),
    ...(content.revisits === undefined ? [] : [`Fixed stations are those of ${content.revisits}.`]),
    ...(laid === null
      ? []
      : [
          `Belts laid on ${laid.on} for ${laid.forDate}: ${formatCount(laid.belts)} of ${formatShort(laid.beltLengthM)} m${laid.belts === 1 ? '' : ` with ${formatShort(laid.gapM)} m between`}${laid.beltWidthM === null ? '' : `, ${formatShort(laid.beltWidthM)} m wide`}; ${modelInWords(laid)}.`,
        ]),
  ];
}

export function modelInWords(laid: NonNullable<PlanContent['laid']>, language: Language = 'en'): string {
  const words = planPhrases(language);
  const { validFromYear, validToYear } = laid;
  const valid = validFromYear === undefined ? '' : words.valid(String(validFromYear), String(validToYear));
  return words.model(laid.declinationModel, valid);
}

function strataInWords(n: number): string {
  return counted(formatCount(n), 'stratum', 'strata');
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

export function roleInWords({ role, replaces }: PlannedStation, language: Language = 'en'): string {
  const words = planPhrases(language);
  if (role === 'planned') return replaces === null ? '' : words.inPlaceOf(replaces);
  return role === 'spare' ? words.spare : words.dropped;
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
      { head: 'chosen', cell: ({ selection }) => planPhrases('en').selections[selection] },
      { head: 'now', cell: (one) => roleInWords(one) },
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
  language: Language = 'en',
): string {
  const [first] = belts;
  if (first === undefined) return '';
  const last = belts.at(-1)!;
  const words = bearingInWords(first[kind]);
  return last[kind] === first[kind]
    ? words
    : planPhrases(language).bearings(words, bearingInWords(last[kind]));
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
