/** Belts of a plan for the command line: one row a belt, stations apart. */

import { counted } from '../survey/counted.ts';
import type { PlanContent, PlannedStation } from '../survey/plan-words.ts';
import { writePosition } from '../survey/position-notation.ts';
import type { Language } from './catalogue/language.ts';
import { formatCount, formatShare, formatShort, withDecimalMark } from './numbers.ts';
import { bearing, bearingInWords, modelInWords } from './plan-lines.ts';
import { textTable } from './text-table.ts';

export function layingLines(content: PlanContent): readonly string[] {
  const { laid } = content;
  if (laid === null) return [];
  const stations = content.stations.filter(({ belts }) => belts.length > 0);
  return [
    `${counted(formatCount(stations.length), 'station')}, each ${counted(formatCount(laid.belts), 'belt')} of ${formatShort(laid.beltLengthM)} m${laid.belts === 1 ? '' : ` with ${formatShort(laid.gapM)} m between`}; ${modelInWords(laid)}, for ${laid.forDate}.`,
    `Inside: the share of belt on its ground, ${laid.beltWidthM === null ? 'along its line (no width given)' : `over its whole width of ${formatShort(laid.beltWidthM)} m`}. Room: degrees off the bearing before a belt leaves it.`,
    '',
    textTable<PlannedStation>(
      [
        { head: 'station', cell: ({ code, role }) => `${code}${role === 'spare' ? ' (spare)' : ''}` },
        { head: 'start (WGS84)', cell: ({ belts }) => writePosition(belts[0]!.start) },
        { head: 'end', cell: ({ belts }) => writePosition(belts.at(-1)!.end) },
        { head: 'true', cell: (one) => bearing(one, 'trueBearingDeg'), number: true },
        { head: 'compass', cell: (one) => bearing(one, 'magneticBearingDeg'), number: true },
        { head: 'declination', cell: (one) => declinationOf(one), number: true },
        { head: 'inside', cell: ({ shareInside }) => formatShare(shareInside ?? 0), number: true },
        { head: 'room', cell: roomOf, number: true },
        { head: 'turns', cell: turnsInWords },
      ],
      stations,
    ),
  ];
}

export function declinationOf({ laying }: PlannedStation, language: Language = 'en'): string {
  return laying === undefined ? '' : declinationInWords(laying.declinationDeg, language);
}

/** "12.8° E": east positive. */
export function declinationInWords(degrees: number, language: Language = 'en'): string {
  const tenths = Math.abs(degrees).toFixed(1);
  return `${withDecimalMark(tenths, language)}°${Number(tenths) === 0 ? '' : degrees < 0 ? ' W' : ' E'}`;
}

function roomOf({ laying, shareInside }: PlannedStation): string {
  if (laying === undefined || shareInside !== 1) return '';
  return laying.slackDeg >= 180 ? 'any' : `${formatShort(Math.round(laying.slackDeg))}°`;
}

/** "belt 3: 20° to starboard". */
export function turnsInWords({ laying }: PlannedStation): string {
  const turns = (laying?.turnsDeg ?? []).map((turn, i) => ({ belt: i + 2, turn: Math.round(turn) }));
  return turns
    .filter(({ turn }) => turn !== 0)
    .map(({ belt, turn }) => `belt ${belt}: ${Math.abs(turn)}° to ${turn > 0 ? 'starboard' : 'port'}`)
    .join('; ');
}

/** Every belt, for `--belts`. */
export function beltLines(content: PlanContent): readonly string[] {
  const rows = content.stations.flatMap(({ code, belts }) => belts.map((belt) => ({ code, ...belt })));
  if (rows.length === 0) return [];
  return [
    '',
    textTable<(typeof rows)[number]>(
      [
        { head: 'station', cell: ({ code }) => code },
        { head: 'belt', cell: ({ number }) => formatCount(number), number: true },
        { head: 'start (WGS84)', cell: ({ start }) => writePosition(start) },
        { head: 'end', cell: ({ end }) => writePosition(end) },
        { head: 'true', cell: ({ trueBearingDeg }) => bearingInWords(trueBearingDeg), number: true },
        {
          head: 'compass',
          cell: ({ magneticBearingDeg }) => bearingInWords(magneticBearingDeg),
          number: true,
        },
      ],
      rows,
    ),
  ];
}
