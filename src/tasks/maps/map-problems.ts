/** Findings of a map as problems with words a sentence can take: places, borders, units. */

import type { MapFinding } from '../../survey/map-area.ts';
import type { Parameters, Problem } from '../../survey/message.ts';
import { writePosition } from '../../survey/position-notation.ts';
import { problemOf } from '../../survey/problem-of.ts';

/** Findings as problems of one file (null for the maps that are in the book). */
export function mapProblems(findings: readonly MapFinding[], file: string | null): readonly Problem[] {
  return findings.map((finding) =>
    problemOf(finding.code, file === null ? {} : { file }, { parameters: wordsOf(finding, file) }),
  );
}

function wordsOf({ code, where, parameters }: MapFinding, file: string | null): Parameters {
  const { part, ring, latitudeDeg, longitudeDeg, kind, unit, letters, features, limit, ...rest } = parameters;
  const words: Record<string, string | number> = { ...rest };
  if (kind === 'wpt' || kind === 'rtept' || kind === 'trkpt')
    words.piece = ['waypoint', where ?? ''].join(' ').trim();
  else if (where !== null && where !== file) words.area = where;
  if (typeof rest.detail === 'string') words.detail = oneLine(rest.detail);
  if (typeof part === 'number') words.piece = pieceInWords(part, ring);
  if (typeof latitudeDeg === 'number' && typeof longitudeDeg === 'number') {
    words.at = writePosition({ latitudeDeg, longitudeDeg });
    words.latitude = latitudeDeg.toFixed(5);
  }
  if (typeof kind === 'string') words.kind = kindInWords(kind, rest.count);
  if (typeof rest.crossings === 'number')
    words.times = rest.crossings === 1 ? 'once' : `${rest.crossings} times`;
  if (typeof unit === 'string') words.unit = units[unit] ?? '';
  if (typeof letters === 'number') words.size = `${letters} letters`;
  if (typeof features === 'number') words.size = `${features} areas and more`;
  if (typeof limit === 'number') words.limit = limit;
  if (code === 'no-area-in-map') words.what = where === null || where === file ? 'this map' : where;
  return words;
}

/** What a library said, without the name of its error and without the rest of the file. */
function oneLine(detail: string): string {
  return detail
    .replace(/^\w*Error: /, '')
    .split(/[\r\n]/)[0]!
    .slice(0, 100);
}

function pieceInWords(part: number, ring: unknown): string {
  const hole = typeof ring === 'number' && ring > 0 ? `, hole ${ring}` : '';
  return `piece ${part}${hole}`;
}

const kinds: Readonly<Record<string, readonly [one: string, many: string]>> = {
  point: ['point', 'points'],
  line: ['line', 'lines'],
  mixed: ['mixed collection', 'mixed collections'],
  curve: ['curve', 'curves'],
  empty: ['feature without a place', 'features without a place'],
};

function kindInWords(kind: string, count: unknown): string {
  const [one, many] = kinds[kind] ?? [kind, kind];
  return count === 1 ? one : many;
}

const units: Readonly<Record<string, string>> = {
  km2: 'km²',
  m2: 'm²',
  acre: 'acres',
  nm2: 'square nautical miles',
};
