/** Reads each belt and each line once: what did not change keeps its identity, and with it its reading. */

import type { SpeciesGroup } from '../../tasks/sheets/running-list.ts';
import {
  type BeltReading,
  type ReadingTools,
  readBelt,
  readLine,
  type TypedBelt,
  type TypedLine,
} from '../../tasks/sheets/typed-sheet.ts';

export interface BeltReader {
  readonly belt: (belt: TypedBelt) => BeltReading;
  readonly line: (line: TypedLine) => SpeciesGroup;
}

/** With sixty belts on the screen a key costs the reading of one line. */
export function beltReader(tools: ReadingTools): BeltReader {
  const line = once((one: TypedLine) => readLine(one, tools));
  return { line, belt: once((one: TypedBelt) => readBelt(one, tools, line)) };
}

function once<Thing extends object, Reading>(read: (thing: Thing) => Reading): (thing: Thing) => Reading {
  const readings = new WeakMap<Thing, Reading>();
  return (thing) => {
    const known = readings.get(thing);
    if (known !== undefined) return known;
    const reading = read(thing);
    readings.set(thing, reading);
    return reading;
  };
}
