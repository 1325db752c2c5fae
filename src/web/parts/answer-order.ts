/** Which answers are shown, in which order, and as a table for other programs. */

import type { DensityRow, SizesRow } from '../../tasks/sheets/answer-schemas.ts';

export const orders = ['name', 'most', 'surest', 'place'] as const;
export type Order = (typeof orders)[number];

type Sortable = Pick<DensityRow, 'survey' | 'species' | 'name' | 'scope'>;

/** Rows of one species or all, of one place or all; null is all. */
export function chosenRows<Row extends Sortable>(
  rows: readonly Row[],
  { species, place }: { readonly species: string | null; readonly place: string | null },
): Row[] {
  return rows.filter(
    (row) => (species === null || row.species === species) && (place === null || row.scope.name === place),
  );
}

/** What is unknown stands last, whichever order was asked for. */
export function inOrder<Row extends Sortable>(
  rows: readonly Row[],
  order: Order,
  { most, spread }: { most: (row: Row) => number | null; spread: (row: Row) => number | null },
): Row[] {
  const byName = (a: Row, b: Row) => named(a).localeCompare(named(b));
  if (order === 'name') return rows.toSorted(byName);
  if (order === 'place') {
    return rows.toSorted((a, b) => a.scope.name.localeCompare(b.scope.name) || byName(a, b));
  }
  const value = order === 'most' ? (row: Row) => negative(most(row)) : spread;
  return rows.toSorted((a, b) => rank(value(a)) - rank(value(b)) || byName(a, b));
}

/** Tab-separated, full digits, one header line: pastes into any sheet of numbers. Unknown is an empty cell. */
export function densityTable(rows: readonly DensityRow[]): string[][] {
  const header = [
    ...['survey', 'species', 'by', 'place', 'stations', 'stations_with_species', 'animals'],
    ...['searched_area_m2', 'density_per_ha', 'standard_error_per_ha', 'cv_percent', 'interval_low_per_ha'],
    ...['interval_high_per_ha', 'interval_method', 'bound_if_scattered_per_ha', 'area_ha', 'stock_animals'],
    ...['stock_low', 'stock_high', 'reason', 'remarks'],
  ];
  const body = rows.map((row) => [
    ...[row.survey, row.species, row.scope.by, row.scope.name, row.stations, row.stationsWithSpecies],
    ...[row.animals, row.searchedAreaM2, row.densityPerHa, row.standardErrorPerHa],
    ...[row.coefficientOfVariationPercent, row.intervalPerHa?.[0], row.intervalPerHa?.[1]],
    ...[row.intervalMethod, row.scatteredBoundPerHa, row.areaHa, row.totalAnimals],
    // Who let a held answer through stands there, and goes along with the copy.
    ...[row.totalInterval?.[0], row.totalInterval?.[1], row.reason, row.cautions.join(' ')],
  ]);
  return [header, ...body.map((cells) => cells.map(cell))];
}

export function sizesTable(rows: readonly SizesRow[]): string[][] {
  const header = [
    ...['survey', 'species', 'by', 'place', 'animals', 'measured', 'mean_length_mm', 'standard_error_mm'],
    ...['p10_mm', 'median_mm', 'p90_mm', 'limit_mm', 'share_at_least', 'share_low', 'share_high', 'reason'],
  ];
  const body = rows.map((row) => [
    ...[row.survey, row.species, row.scope.by, row.scope.name, row.animals, row.measured, row.meanLengthMm],
    ...[row.standardErrorMm, row.quantilesMm?.['p10'], row.quantilesMm?.['p50'], row.quantilesMm?.['p90']],
    ...[row.shareAtLeast?.limitMm, row.shareAtLeast?.share, row.shareAtLeast?.interval?.[0]],
    ...[row.shareAtLeast?.interval?.[1], row.reason],
  ]);
  return [header, ...body.map((cells) => cells.map(cell))];
}

export function tabSeparated(table: readonly (readonly string[])[]): string {
  return `${table.map((cells) => cells.map((text) => text.replace(/[\t\r\n]+/g, ' ')).join('\t')).join('\n')}\n`;
}

function cell(value: string | number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value);
}

function named({ name, scope, survey }: Sortable): string {
  return `${name}\u0000${scope.name}\u0000${survey}`;
}

function negative(value: number | null): number | null {
  return value === null ? null : -value;
}

function rank(value: number | null): number {
  return value ?? Number.MAX_VALUE;
}
