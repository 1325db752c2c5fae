/** Makes the text of one of our columns out of a row of somebody else's file. */

import { readDayInForm } from './calendar.ts';
import type { ColumnSource } from './mapping-schema.ts';

export type Take = (cells: readonly string[]) => string;

/** Gives the position of one of their columns. */
export type PositionOf = (column: string) => number;

export function takeFrom(source: ColumnSource, missing: readonly string[], positionOf: PositionOf): Take {
  if (typeof source === 'string') return cellOf(source, missing, positionOf);
  if ('constant' in source) return () => source.constant;
  if ('join' in source) {
    const parts = source.join.map((column) => cellOf(column, missing, positionOf));
    return (cells) =>
      parts
        .map((part) => part(cells))
        .filter((text) => text !== '')
        .join(source.separator);
  }
  const cell = cellOf(source.from, [...missing, ...(source.missing ?? [])], positionOf);
  const steps = stepsOf(source);
  return (cells) => steps.reduce((text, step) => (text === '' ? '' : step(text)), cell(cells));
}

/** Their columns that a source needs. */
export function columnsOf(source: ColumnSource): readonly string[] {
  if (typeof source === 'string') return [source];
  if ('constant' in source) return [];
  return 'join' in source ? source.join : [source.from];
}

function cellOf(column: string, missing: readonly string[], positionOf: PositionOf): Take {
  const index = positionOf(column);
  const blanks = new Set(missing.map((text) => text.trim()));
  return (cells) => {
    const text = (cells[index] ?? '').trim();
    return blanks.has(text) ? '' : text;
  };
}

type Step = (text: string) => string;

/** First the part that is meant, then our word for it, then the day. */
function stepsOf(source: Extract<ColumnSource, { from: string }>): Step[] {
  const steps: Step[] = [];
  const { pick, values, dateForms } = source;
  if (pick !== undefined) {
    const pattern = new RegExp(pick, 'u');
    steps.push((text) => {
      const parts = pattern.exec(text);
      return parts?.[1] ?? parts?.[0] ?? '';
    });
  }
  if (values !== undefined) {
    const ours = new Map(Object.entries(values));
    steps.push((text) => ours.get(text) ?? text);
  }
  // A day that fits no form stays as written, so that the problem shows it.
  if (dateForms !== undefined) {
    steps.push((text) => {
      for (const form of dateForms) {
        const day = readDayInForm(text, form);
        if (day !== null) return day;
      }
      return text;
    });
  }
  return steps;
}

/**
 * The power of ten between a unit of theirs and the unit our column is in; null when the two do not measure
 * the same thing. Our unit is the ending of the column's name.
 */
export function shiftBetween(unit: string, ourColumn: string): number | null {
  const ours = /_(mm|cm|m|ha|g)$/.exec(ourColumn)?.[1];
  return ours === undefined ? null : (powers[ours]?.[unit] ?? null);
}

const powers: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mm: { mm: 0, cm: 1, m: 3 },
  cm: { mm: -1, cm: 0, m: 2 },
  m: { mm: -3, cm: -2, m: 0, km: 3 },
  ha: { m2: -4, ha: 0, km2: 2 },
  g: { g: 0, kg: 3 },
};
