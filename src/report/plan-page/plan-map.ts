/**
 * The map of a plan: borders of the strata, ground that the masks took, and the stations. Colour says the stratum; shape
 * says how a station was chosen, so that a black-and-white copy says the same.
 */

import * as Plot from '@observablehq/plot';
import { commonGround } from '../../planning/ground/area-sets.ts';
import type { MapArea, Ring } from '../../survey/map-area.ts';
import type { PlannedStation } from '../../survey/plan-words.ts';
import type { MapAreaRecord } from '../../survey/words.ts';
import type { Language } from '../catalogue/language.ts';
import { colours } from '../colours.ts';
import { codeMarks } from '../map-codes.ts';
import { mapFurniture } from '../map-furniture.ts';
import { type MapSheet, mapSheet, type Point } from '../map-projection.ts';
import { seriesColours } from '../palette.ts';
import { type PlotDocument, plotFigure } from '../plot-figure.ts';
import { type PositionDetail, positionAtDetail } from '../position-detail.ts';
import { legendMarks } from './plan-map-legend.ts';
import { maskPattern, signOf, stationKind } from './plan-map-signs.ts';
import type { PlanPageInput } from './plan-page-input.ts';

export interface PlanMapFrame {
  readonly width: number;
  readonly inWords: string;
  readonly document: PlotDocument;
  readonly language: Language;
}

const roomLeft = 16;
const roomBelow = 44;

/** Null where positions are kept back, or neither border nor station is known. */
export function planMap(
  { content, areas, positionDetail }: PlanPageInput,
  frame: PlanMapFrame,
): string | null {
  const strata = content.strata.map(({ name }) => name);
  const mapped = strata.flatMap((name, i) => {
    const record = areas.find((one) => one.role === 'stratum' && one.name === name);
    return record === undefined ? [] : [{ name, colour: seriesColours[i % seriesColours.length]!, record }];
  });
  const spots = content.stations.flatMap((station) => {
    const point = pointOf(station, positionDetail);
    return point === null ? [] : [{ station, point }];
  });
  const corners = mapped.flatMap(({ record }) => record.content.area.parts.flatMap((part) => part.outer));
  if (positionDetail === 'none' || spots.length + corners.length === 0) return null;
  const sheet = mapSheet([...corners, ...spots.map(({ point }) => point)], {
    width: frame.width - roomLeft,
    maximumHeight: frame.width < 500 ? 400 : 560,
  });
  const placed = spots.map(({ station, point }) => ({ station, ...sheet.place(point) }));
  const taken = maskedGround(mapped, areas);
  const pattern = maskPattern(frame.width);
  const legend = legendMarks(
    {
      ...{ strata: mapped, stations: content.stations, language: frame.language },
      maskFill: taken.length > 0 ? pattern.fill : null,
    },
    { width: frame.width, left: roomLeft, below: roomBelow },
  );
  const marginBottom = roomBelow + legend.height;
  const options: Plot.PlotOptions = {
    width: frame.width,
    height: sheet.height + marginBottom,
    ...{ margin: 0, marginLeft: roomLeft, marginBottom },
    x: { domain: [-sheet.halfEastKm, sheet.halfEastKm], axis: null },
    y: { domain: [-sheet.halfNorthKm, sheet.halfNorthKm], axis: null },
    marks: [
      ...mapped.flatMap(({ record, colour }) => stratumMarks(record.content.area, { sheet, colour })),
      ...taken.flatMap((area) => maskMarks(area, { sheet, fill: pattern.fill })),
      ...mapFurniture(sheet),
      replacementMarks(placed),
      ...placed
        .toSorted((a, b) => rank(a.station) - rank(b.station))
        .map(({ station, eastKm, northKm }) =>
          Plot.dot([0], {
            ...{ x: [eastKm], y: [northKm] },
            ...signOf(stationKind(station), colourOf(station, mapped)),
          }),
        ),
      codeMarks(
        placed
          .filter(({ station }) => station.role === 'planned')
          .map(({ station, eastKm, northKm }) => ({ code: station.code, eastKm, northKm })),
        sheet,
      ),
      ...legend.marks,
    ],
  };
  return plotFigure(options, { ...frame, definitions: pattern.markup });
}

function pointOf({ position }: PlannedStation, detail: PositionDetail): Point | null {
  const latitudeDeg = positionAtDetail(position.latitudeDeg, detail);
  const longitudeDeg = positionAtDetail(position.longitudeDeg, detail);
  return latitudeDeg === null || longitudeDeg === null ? null : { latitudeDeg, longitudeDeg };
}

interface MappedColour {
  readonly name: string;
  readonly colour: string;
  readonly record: MapAreaRecord;
}

function colourOf({ stratum }: PlannedStation, mapped: readonly MappedColour[]): string {
  return mapped.find(({ name }) => name === stratum)?.colour ?? colours.softInk;
}

/** Planned stations over spares over dropped ones. */
function rank({ role }: PlannedStation): number {
  return role === 'planned' ? 2 : role === 'spare' ? 1 : 0;
}

/** Only what the masks took off the strata: a coast is not drawn to the end of the world. */
function maskedGround(mapped: readonly MappedColour[], areas: readonly MapAreaRecord[]): readonly MapArea[] {
  const masks = areas.filter(({ role }) => role === 'mask');
  return mapped.flatMap(({ record }) =>
    masks
      .map((mask) => commonGround(record.content.area, mask.content.area))
      .filter(({ parts }) => parts.length > 0),
  );
}

function stratumMarks(
  area: MapArea,
  { sheet, colour }: { readonly sheet: MapSheet; readonly colour: string },
) {
  return area.parts.flatMap((part) => [
    ringMark(part.outer, sheet, { stroke: colour, strokeWidth: 1.8, fill: colour, fillOpacity: 0.13 }),
    ...part.holes.map((hole) =>
      ringMark(hole, sheet, { stroke: colour, strokeWidth: 1.8, fill: colours.paper }),
    ),
  ]);
}

function maskMarks(area: MapArea, { sheet, fill }: { readonly sheet: MapSheet; readonly fill: string }) {
  return area.parts.flatMap((part) => [
    ringMark(part.outer, sheet, { stroke: colours.softInk, strokeWidth: 0.8, fill }),
    ...part.holes.map((hole) =>
      ringMark(hole, sheet, { stroke: colours.softInk, strokeWidth: 0.8, fill: colours.paper }),
    ),
  ]);
}

/** Corners nearer than half a unit of the drawing would not be seen. */
function ringMark(ring: Ring, { place, unitsPerKm }: MapSheet, look: Plot.LineOptions): Plot.Markish {
  const kept: { readonly eastKm: number; readonly northKm: number }[] = [];
  for (const corner of ring) {
    const at = place(corner);
    const last = kept.at(-1);
    const apart =
      last === undefined ? Infinity : Math.hypot(at.eastKm - last.eastKm, at.northKm - last.northKm);
    if (apart * unitsPerKm >= 0.5) kept.push(at);
  }
  return Plot.line(kept, { x: 'eastKm', y: 'northKm', curve: 'linear-closed', ...look });
}

/** From a station given up to the one that took its place. */
function replacementMarks(
  placed: readonly { readonly station: PlannedStation; readonly eastKm: number; readonly northKm: number }[],
): Plot.Markish {
  const links = placed.flatMap(({ station, eastKm, northKm }) => {
    const from = placed.find((other) => other.station.code === station.replaces);
    return from === undefined ? [] : [{ x1: from.eastKm, y1: from.northKm, x2: eastKm, y2: northKm }];
  });
  return Plot.link(links, {
    ...{ x1: 'x1', y1: 'y1', x2: 'x2', y2: 'y2' },
    ...{ stroke: colours.softInk, strokeWidth: 1, strokeDasharray: '3 3' },
  });
}
