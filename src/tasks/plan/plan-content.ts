/** Between a draw and the plan that the book keeps. */

import type { DrawnPlan } from '../../planning/draw/drawn-plan.ts';
import type { PlanContent, PlannedStation } from '../../survey/plan-words.ts';

/** The draw inside a plan of the book; a replacement with nothing in its place stays in the book alone. */
export function drawOf(content: PlanContent): DrawnPlan {
  const { seed, method, minimumSpacingM, stations, passedOver, replacements } = content;
  return {
    ...{ seed, method, minimumSpacingM, passedOver },
    stations: stations.map(({ code, stratum, position, selection, role, replaces }) => ({
      ...{ code, stratum, position, selection, role, replaces },
    })),
    replacements: replacements.flatMap((one) =>
      one.replacement === null ? [] : [{ ...one, replacement: one.replacement }],
    ),
  };
}

/** The plan after something happened to its draw; belts that were laid stay with their stations. */
export function withDraw(content: PlanContent, draw: DrawnPlan): PlanContent {
  const before = new Map(content.stations.map((station) => [station.code, station]));
  const stations = draw.stations.map(
    (station): PlannedStation => ({
      ...(before.get(station.code) ?? { belts: [], shareInside: null }),
      ...station,
    }),
  );
  return { ...content, stations, replacements: [...draw.replacements] };
}
