/**
 * What a number of stations gives, in two panels: the CV to count on, and the smallest fall that is told. A line for each
 * species, named at its end; the planned number as a rule.
 */

import * as Plot from '@observablehq/plot';
import type { Species } from '../survey/words.ts';
import { colours } from './colours.ts';
import { formatCount, formatShare } from './numbers.ts';
import { type PlotDocument, plotFigure } from './plot-figure.ts';
import { speciesNames } from './species-names.ts';

export interface CurvesToDraw {
  readonly species: readonly {
    readonly subject: { readonly name: string };
    readonly curve: readonly {
      readonly stations: number;
      readonly cvAssured: number;
      readonly fallAssured: number;
    }[];
  }[];
  readonly need: { readonly stations: number } | null;
  readonly bookSpecies: readonly Species[];
}

interface CurveFrame {
  readonly document: PlotDocument;
  readonly stationsPerDay: number | null;
}

interface Point {
  readonly name: string;
  readonly stations: number;
  readonly share: number;
}

const width = 640;
const height = 300;

/** Both panels in one picture (SVG). */
export function precisionCurveFigure(curves: CurvesToDraw, frame: CurveFrame): string {
  const nameOf = (species: string) => speciesNames(curves.bookSpecies)(species).label;
  const pointsOf = (shareAt: (point: CurvesToDraw['species'][number]['curve'][number]) => number) =>
    curves.species.flatMap(({ subject, curve }) =>
      curve.map((point) => ({ name: nameOf(subject.name), stations: point.stations, share: shareAt(point) })),
    );
  const need = curves.need?.stations ?? null;
  const precision = panel(
    pointsOf((point) => point.cvAssured),
    'CV to count on',
    { ...frame, need },
  );
  const words = 'smallest fall told: what is left of the density';
  const fall = panel(
    pointsOf((point) => 1 - point.fallAssured),
    words,
    { ...frame, need },
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${2 * height}" viewBox="0 0 ${width} ${2 * height}">`,
    `<rect width="${width}" height="${2 * height}" fill="${colours.paper}"/>`,
    precision,
    fall.replace('<svg ', `<svg y="${height}" `),
    '</svg>\n',
  ].join('\n');
}

function panel(
  points: readonly Point[],
  words: string,
  { document, need, stationsPerDay }: CurveFrame & { readonly need: number | null },
): string {
  const most = Math.max(...points.map((point) => point.stations));
  const highest = Math.min(1, Math.max(...points.map((point) => point.share)));
  const options: Plot.PlotOptions = {
    ...{ width, height, marginTop: 34, marginRight: 130, marginBottom: 48, marginLeft: 52 },
    x: { domain: [0, most] },
    y: { domain: [0, highest], clamp: true },
    marks: [
      Plot.gridY({ ticks: 5, stroke: colours.rule, strokeOpacity: 1, strokeWidth: 0.6 }),
      Plot.axisY({
        ticks: 5,
        tickSize: 0,
        fontSize: 12,
        label: null,
        tickFormat: (share: number) => formatShare(share),
      }),
      Plot.axisX({
        ...{ ticks: 6, tickSize: 4, fontSize: 12, tickFormat: formatCount, label: axisWords(stationsPerDay) },
        ...{ labelAnchor: 'center', labelOffset: 40, labelArrow: 'none' },
      }),
      Plot.text([words], { frameAnchor: 'top-left', dy: -22, dx: -44, textAnchor: 'start', fontSize: 12 }),
      // Where the line leaves the panel it is left out, not drawn along the edge.
      Plot.line(
        points.filter((point) => point.share <= highest),
        {
          ...{ x: 'stations', y: 'share', z: 'name', stroke: colours.softInk, strokeWidth: 1.6 },
        },
      ),
      Plot.text(
        movedApart(
          points.filter((point) => point.stations === most),
          highest,
        ),
        {
          ...{ x: 'stations', y: 'shownAt', text: 'name', textAnchor: 'start', dx: 6, fontSize: 12 },
        },
      ),
      ...(need === null || need > most ? [] : needMarks(need, most)),
      Plot.ruleY([0]),
    ],
  };
  return plotFigure(options, { document, inWords: inWords(points, words) });
}

function axisWords(stationsPerDay: number | null): string {
  return stationsPerDay === null ? 'stations' : `stations (${formatCount(stationsPerDay)} a boat day)`;
}

/** Names that would lie on each other are moved apart, the lowest line first. */
function movedApart(points: readonly Point[], highest: number) {
  const step = 0.065 * highest;
  let least = 0;
  return points
    .toSorted((a, b) => a.share - b.share)
    .map((point) => {
      const shownAt = Math.max(Math.min(point.share, highest), least);
      least = shownAt + step;
      return { ...point, shownAt };
    });
}

function needMarks(stations: number, most: number): Plot.Markish[] {
  const isRight = stations > 0.6 * most;
  return [
    Plot.ruleX([stations], { strokeWidth: 1.8, strokeDasharray: '6 3' }),
    Plot.text([`${formatCount(stations)} stations`], {
      ...{ x: [stations], frameAnchor: 'top', dy: -14, fontWeight: 600, fontSize: 12 },
      ...(isRight ? { textAnchor: 'end', dx: -6 } : { textAnchor: 'start', dx: 6 }),
    }),
  ];
}

function inWords(points: readonly Point[], words: string): string {
  const names = [...new Set(points.map((point) => point.name))];
  const parts = names.map((name) => {
    const own = points.filter((point) => point.name === name);
    const said = [own[0]!, own.at(-1)!].map(
      ({ share, stations }) => `${formatShare(share)} at ${formatCount(stations)} stations`,
    );
    return `${name}: ${said.join(', ')}`;
  });
  return `${words}, against the number of stations. ${parts.join('; ')}`;
}
