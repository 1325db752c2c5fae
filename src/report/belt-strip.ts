/**
 * The belt strip: a station drawn as its own line of belts, to scale along the line, with its gaps.
 * A stroke per animal as on the slate, or a filled height per count where strokes would not fit.
 * Searched and empty is an outlined box, lost is hatched, an unanswered blank is dotted, short is short.
 */

import type { StationWithTransects } from '../survey/observation.ts';
import type { Protocol, Species } from '../survey/words.ts';
import { type Belt, beltsOf } from './belts.ts';
import type { Language } from './catalogue/language.ts';
import { reportPhrases } from './catalogue/report-phrases.ts';
import { colours } from './colours.ts';
import { formatCount } from './numbers.ts';
import { drawing, element, line, write } from './svg.ts';

export interface StripFrame {
  readonly width: number;
  readonly protocol: Protocol | null;
  /** Null shows all animals together. */
  readonly species: Species | null;
  /** The count that fills a belt to the top, the same for all strips that are read together. */
  readonly fullCount: number;
  /** Of the words for those who cannot see it; English where none is given. */
  readonly language?: Language;
}

const beltHeight = 20;
const laneGap = 3;
const strokePitch = 3;
/** Parallel belts have their counts at their ends. */
const roomForCount = 36;

/** One station as a drawing of its own. */
export function beltStrip(station: StationWithTransects, frame: StripFrame): string {
  const belts = beltsOf(station, frame.species, frame.protocol);
  const placed = placeBelts(belts, frame);
  const withStrokes = placed.every(({ belt, width }) => belt.animals * strokePitch + 4 <= width);
  const children = placed.flatMap((place) => drawBelt(place, withStrokes, frame));
  if (belts.length === 0) children.push(emptyStation(frame.width));
  const lanes = Math.max(1, ...placed.map((place) => place.lane + 1));
  const height = lanes * (beltHeight + laneGap) + (frame.protocol?.layout === 'parallel' ? 0 : 14);
  return drawing({ width: frame.width, height }, stripInWords(station, belts, frame.language), children);
}

interface PlacedBelt {
  readonly belt: Belt;
  readonly x: number;
  readonly width: number;
  readonly lane: number;
}

/** Series: one after another. Parallel: one below another. Quadrats and timed searches: boxes side by side. */
function placeBelts(belts: readonly Belt[], { width, protocol }: StripFrame): PlacedBelt[] {
  const layout = protocol?.layout ?? 'series';
  const longestM = Math.max(1, ...belts.map((belt) => belt.plannedLengthM));
  if (layout === 'parallel') {
    const perMetre = (width - roomForCount) / longestM;
    return belts.map((belt, lane) => ({ belt, x: 1, width: belt.lengthM * perMetre, lane }));
  }
  const boxes = layout === 'quadrats' || layout === 'timed';
  const gapM = boxes ? longestM * 0.35 : (protocol?.gapM ?? longestM * 0.05);
  const plannedBelts = Math.max(belts.length, protocol?.transectsPerStation ?? 0);
  const wholeM =
    belts.reduce((sum, belt) => sum + belt.plannedLengthM, 0) + (plannedBelts - belts.length) * longestM;
  const perMetre = Math.min(
    (width - 2) / (wholeM + gapM * (plannedBelts - 1)),
    boxes ? beltHeight / longestM : 1e9,
  );
  let startM = 0;
  return belts.map((belt) => {
    const place = { belt, x: 1 + startM * perMetre, width: belt.lengthM * perMetre, lane: 0 };
    startM += belt.plannedLengthM + gapM;
    return place;
  });
}

function drawBelt({ belt, x, width, lane }: PlacedBelt, withStrokes: boolean, frame: StripFrame): string[] {
  const { fullCount } = frame;
  const parallel = frame.protocol?.layout === 'parallel';
  const y = 1 + lane * (beltHeight + laneGap);
  const box = { x, y, width, height: beltHeight };
  if (belt.state === 'lost') return hatched(box);
  if (belt.state === 'not looked for') {
    return [line(x, y + beltHeight / 2, x + width, y + beltHeight / 2, { stroke: colours.softInk })];
  }
  const dots = belt.state === 'unresolved' ? '1.5 3' : null;
  const outline = element('rect', {
    ...box,
    fill: 'none',
    stroke: dots === null ? colours.ink : colours.question,
    'stroke-width': dots === null ? 1 : 1.6,
    'stroke-dasharray': dots,
  });
  if (belt.animals === 0) return [outline];
  const marks = withStrokes ? strokes(box, belt.animals) : filledHeight(box, belt.animals, fullCount);
  return [...marks, outline, countLabel(box, belt.animals, parallel)];
}

/** Below the belt; at its end where belts stand below each other. */
function countLabel({ x, y, width, height }: Box, animals: number, parallel: boolean): string {
  const words = formatCount(animals);
  if (parallel) return write(x + width + 5, y + height - 6, words, { 'font-size': 11 });
  return write(x + width / 2, y + height + 12, words, { 'text-anchor': 'middle', 'font-size': 11 });
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function strokes({ x, y, height }: Box, animals: number): string[] {
  return Array.from({ length: animals }, (_, i) => {
    const at = x + 4 + i * strokePitch;
    return line(at, y + 4, at, y + height - 4, { 'stroke-width': 1.4 });
  });
}

function filledHeight({ x, y, width, height }: Box, animals: number, fullCount: number): string[] {
  const filled = Math.max(1, height * Math.min(1, animals / Math.max(1, fullCount)));
  return [element('rect', { x, y: y + height - filled, width, height: filled, fill: colours.softInk })];
}

function hatched({ x, y, width, height }: Box): string[] {
  const children = [element('rect', { x, y, width, height, fill: 'none', stroke: colours.rule })];
  for (let at = -height; at < width; at += 5) {
    const from = Math.max(0, at);
    const to = Math.min(width, at + height);
    const start = y + height - (from - at);
    children.push(line(x + from, start, x + to, y + height - (to - at), { 'stroke-width': 0.7 }));
  }
  return children;
}

function emptyStation(width: number): string {
  const box = { x: 1, y: 1, width: width - 2, height: beltHeight };
  return element('rect', {
    ...box,
    fill: 'none',
    stroke: colours.question,
    'stroke-width': 1.6,
    'stroke-dasharray': '1.5 3',
  });
}

function stripInWords(
  station: StationWithTransects,
  belts: readonly Belt[],
  language: Language = 'en',
): string {
  const { strips } = reportPhrases(language);
  const { code } = station.record;
  if (belts.length === 0) return strips.nothing(code);
  const words = belts.map(
    (belt) => `${belt.code} ${belt.state === 'counted' ? belt.animals : strips.states[belt.state]}`,
  );
  return strips.inWords(code, words.join(', '));
}
