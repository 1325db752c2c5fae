/** Waypoints for the command line: what went out, and what came back beside the plan. */

import { counted } from '../survey/counted.ts';
import type { Position } from '../survey/map-area.ts';
import { writePosition } from '../survey/position-notation.ts';
import { formatCount, formatShort } from './numbers.ts';
import { textTable } from './text-table.ts';

interface OutRow {
  readonly name: string;
  readonly station: string;
  readonly stratum: string;
  readonly role: 'planned' | 'spare' | 'dropped';
  readonly position: Position;
}

export function waypointsOutLines(rows: readonly OutRow[]): readonly string[] {
  return [
    textTable<OutRow>(
      [
        { head: 'waypoint', cell: ({ name }) => name },
        { head: 'station', cell: ({ station }) => station },
        { head: 'stratum', cell: ({ stratum }) => stratum },
        { head: 'is', cell: ({ role }) => (role === 'planned' ? '' : role) },
        { head: 'position (WGS84)', cell: ({ position }) => writePosition(position) },
      ],
      rows,
    ),
  ];
}

interface InRow {
  readonly station: string;
  readonly waypoint: string | null;
  readonly by: 'name' | 'nearness' | 'sent' | null;
  readonly position: Position | null;
  readonly distanceM: number | null;
  readonly time: string | null;
  readonly trackDistanceM: number | null;
  readonly trackTime: string | null;
  readonly written: boolean;
}

export function waypointsInLines(
  rows: readonly InRow[],
  read: { readonly waypoints: number; readonly trackPoints: number },
): readonly string[] {
  const hasTrack = read.trackPoints > 0;
  const met = rows.filter(({ waypoint, by }) => waypoint !== null && by !== 'sent');
  const metres = (value: number | null) => (value === null ? '' : formatShort(Math.round(value)));
  return [
    `${counted(formatCount(read.waypoints), 'waypoint')} and ${counted(formatCount(read.trackPoints), 'track point')}; ${formatCount(met.length)} of ${counted(formatCount(rows.length), 'station')} ${met.length === 1 || rows.length === 1 ? 'has' : 'have'} a waypoint.`,
    '',
    textTable<InRow>(
      [
        { head: 'station', cell: ({ station }) => station },
        { head: 'waypoint', cell: ({ waypoint }) => waypoint ?? '' },
        { head: 'met by', cell: ({ by }) => (by === 'sent' ? 'as sent' : (by ?? 'none')) },
        {
          head: 'position (WGS84)',
          cell: ({ position }) => (position === null ? '' : writePosition(position)),
        },
        { head: 'm from plan', cell: ({ distanceM }) => metres(distanceM), number: true },
        { head: 'time (UTC)', cell: ({ time }) => time ?? '' },
        ...(hasTrack
          ? [
              { head: 'track, m', cell: ({ trackDistanceM }: InRow) => metres(trackDistanceM), number: true },
              { head: 'track time (UTC)', cell: ({ trackTime }: InRow) => trackTime ?? '' },
            ]
          : []),
        ...(rows.some(({ written }) => written)
          ? [{ head: 'written', cell: ({ written }: InRow) => (written ? 'yes' : '') }]
          : []),
      ],
      rows,
    ),
  ];
}
