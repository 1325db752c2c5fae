/** Stations that somebody chose: allowed, and marked for life. */

import { eachCsvRow } from '../../exchange/csv-text.ts';
import type { NamedPosition } from '../../planning/draw/draw-request.ts';
import { borderDistanceM } from '../../planning/ground/border-distance.ts';
import { positionOfUtm } from '../../planning/ground/utm.ts';
import {
  type Planned,
  type PlanProblem,
  planned,
  planProblem,
  refused,
  stops,
} from '../../planning/size/plan-problem.ts';
import { positionWords } from '../../report/catalogue/position-words.ts';
import type { Position } from '../../survey/map-area.ts';
import { readPosition, writePosition } from '../../survey/position-notation.ts';
import type { PositionCaution } from '../../survey/position-words.ts';
import type { PlanDrawRequest } from './draw-request.ts';
import type { GroundStratum } from './plan-ground.ts';

/** By stratum. */
export type HandPicked = ReadonlyMap<string, readonly NamedPosition[]>;

export function handPickedStations(
  typed: PlanDrawRequest['handPicked'],
  strata: readonly GroundStratum[],
): Planned<HandPicked> {
  const found = new Map<string, NamedPosition[]>();
  const problems: PlanProblem[] = [];
  for (const { code, position: text } of typed) {
    if (code === '') {
      problems.push(planProblem('plan-hand-picked-unnamed', { position: text }));
      continue;
    }
    const { position, refusal, cautions } = readPosition(text, positionOfUtm);
    if (position === null) {
      const detail = positionWords[refusal ?? 'not-understood'].replace('{value}', text);
      problems.push(planProblem('plan-position-unclear', { code, detail }));
      continue;
    }
    const at = strata.find(({ index }) => index.contains(position));
    if (at === undefined) problems.push(nowhere(code, position, strata));
    else {
      problems.push(...doubts(code, { text, position, cautions }));
      found.set(at.mapped.name, [...(found.get(at.mapped.name) ?? []), { code, position }]);
    }
  }
  return stops(problems) ? refused(problems) : planned(found, problems);
}

/** What was taken for granted while reading. That it lies in a stratum settles the hemisphere, and not the minutes. */
function doubts(
  code: string,
  read: {
    readonly text: string;
    readonly position: Position;
    readonly cautions: readonly PositionCaution[];
  },
): readonly PlanProblem[] {
  return read.cautions
    .filter((caution) => caution !== 'no-hemisphere' && caution !== 'sign-and-letter')
    .map((caution) => {
      const detail = positionWords[caution].replace('{value}', read.text);
      const position = writePosition(read.position);
      return planProblem('plan-position-doubt', { code, position, detail });
    });
}

function nowhere(code: string, position: Position, strata: readonly GroundStratum[]): PlanProblem {
  const masked = strata.find(({ wholeIndex }) => wholeIndex?.contains(position));
  if (masked !== undefined) {
    return planProblem('plan-hand-picked-on-mask', { code, stratum: masked.mapped.name });
  }
  const near = strata
    .map(({ mapped }) => ({ mapped, distanceM: borderDistanceM(mapped.ground.area, position) ?? Infinity }))
    .toSorted((a, b) => a.distanceM - b.distanceM)[0];
  const stratum = near?.mapped.name ?? '';
  const distanceM = Math.round(near?.distanceM ?? 0);
  return planProblem('plan-hand-picked-nowhere', { code, stratum, distanceM });
}

/** A table of code and position: the position in one column, or latitude and longitude in two. A heading is passed over. */
export function handPickedTable(text: string): PlanDrawRequest['handPicked'] {
  const rows: { code: string; position: string }[] = [];
  eachCsvRow(text, (cells, row) => {
    const [code = '', ...rest] = cells.map((cell) => cell.trim());
    const position = rest.filter((cell) => cell !== '').join(' ');
    // The first row is a heading unless there is a figure in its position.
    if (code === '' && position === '') return;
    if (row === 1 && !/\d/.test(position)) return;
    rows.push({ code, position });
  });
  return rows;
}
