/** Reads a table of own values: one CSV, one row per value, told apart by the column `what`. */

import { lengthWeightLine, weightOfLengthG } from '../estimates/biomass/length-weight-line.ts';
import { isPossibleWeight, possibleWeightsG } from '../estimates/biomass/plausible-weight.ts';
import { eachCsvRow, withoutGuard } from '../exchange/csv-text.ts';
import { encodingOf, textPieces } from '../exchange/text-encoding.ts';
import type { Problem, WithProblems } from '../survey/message.ts';
import { nearestName } from '../survey/nearest-name.ts';
import { problemOf } from '../survey/problem-of.ts';
import {
  type LengthWeight,
  nameOfValue,
  type ValueContent,
  type ValueKind,
  valueContentSchema,
  valueKinds,
} from '../survey/value-words.ts';
import type { Species } from '../survey/words.ts';
import { readCell, type Tell } from './value-cell.ts';
import { valueColumns, valueFields } from './value-columns.ts';

export interface PlacedValue {
  readonly species: Species;
  readonly source: string;
  readonly content: ValueContent;
  readonly row: number;
}

interface TableFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The values of the file, and a problem with row and column for every cell that cannot be one. */
export function readValuesTable(
  file: TableFile,
  findSpecies: (name: string) => Species | null,
  speciesNames: readonly string[],
): WithProblems<readonly PlacedValue[]> {
  const encoding = encodingOf(file.bytes);
  if (encoding === null) {
    const why = 'it is not a text';
    return {
      value: [],
      problems: [problemOf('file-unreadable', { file: file.name }, { parameters: { why } })],
    };
  }
  const problems: Problem[] = [];
  const values: PlacedValue[] = [];
  let header: Header | null = null;
  const broken = eachCsvRow([...textPieces(file.bytes, encoding, true)], (cells, row) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    if (header === null) {
      header = readHeader(cells, file.name, row, problems);
      return;
    }
    // Without its columns no row means anything, and a problem for each would only bury the one that counts.
    if (neededColumns.some((column) => !header!.has(column))) return;
    const read = readValueRow({ cells, row, file: file.name, header, findSpecies, speciesNames });
    problems.push(...read.problems);
    if (read.value !== null) values.push(read.value);
  });
  for (const row of broken) problems.push(problemOf('broken-quotes', { file: file.name, row }));
  if (values.length === 0 && problems.length === 0) {
    problems.push(problemOf('nothing-to-read', { file: file.name }, { parameters: { path: file.name } }));
  }
  return { value: values, problems: [...problems, ...repeated(values, file.name)] };
}

const neededColumns = ['species', 'what', 'source'];

/** Column name to its place. */
type Header = ReadonlyMap<string, number>;

function readHeader(cells: readonly string[], file: string, row: number, problems: Problem[]): Header {
  const header = new Map<string, number>();
  const known = Object.keys(valueColumns);
  for (const [i, cell] of cells.entries()) {
    const name = cell
      .trim()
      .toLowerCase()
      .replace(/^\ufeff/, '')
      .replace(/[\s-]+/g, '_');
    if (name === '') continue;
    if (header.has(name)) problems.push(problemOf('repeated-column', { file, row }, { value: name }));
    else if (known.includes(name)) header.set(name, i);
    else {
      const suggestion = nearestName(name, known);
      problems.push(problemOf('unknown-column', { file, row }, { value: name, suggestion }));
    }
  }
  for (const column of neededColumns) {
    if (!header.has(column)) {
      problems.push(problemOf('missing-column', { file, column }, { parameters: { column } }));
    }
  }
  return header;
}

interface RowInHand {
  readonly cells: readonly string[];
  readonly row: number;
  readonly file: string;
  readonly header: Header;
  readonly findSpecies: (name: string) => Species | null;
  readonly speciesNames: readonly string[];
}

function readValueRow(hand: RowInHand): WithProblems<PlacedValue | null> {
  const problems: Problem[] = [];
  const tell = (code: Problem['code'], column: string, details: Parameters<typeof problemOf>[2] = {}) => {
    const parameters = { column, ...details.parameters };
    problems.push(problemOf(code, { file: hand.file, row: hand.row, column }, { ...details, parameters }));
  };
  const written = cellOf(hand, 'species');
  const species = written === '' ? null : hand.findSpecies(written);
  if (written === '') tell('missing-value', 'species');
  else if (species === null) {
    tell('unknown-species', 'species', {
      value: written,
      suggestion: nearestName(written, hand.speciesNames),
    });
  }
  const source = cellOf(hand, 'source');
  if (source === '') tell('missing-value', 'source');
  const what = kindOf(cellOf(hand, 'what'));
  if (what === null) {
    const value = cellOf(hand, 'what');
    if (value === '') tell('missing-value', 'what');
    else {
      const suggestion = nearestName(value, valueKinds);
      tell('not-one-of', 'what', { value, suggestion, parameters: { options: valueKinds.join(', ') } });
    }
    return { value: null, problems };
  }
  const content = readContent(what, hand, tell);
  if (problems.length > 0 || content === null || species === null) return { value: null, problems };
  return { value: { species, source, content, row: hand.row }, problems };
}

function readContent(what: ValueKind, hand: RowInHand, tell: Tell): ValueContent | null {
  const fields: Record<string, unknown> = { what };
  for (const { column, field, needed } of valueFields[what]) {
    const text = cellOf(hand, column);
    if (text === '') {
      if (needed) tell('missing-value', column);
      fields[field] = null;
      continue;
    }
    fields[field] = readCell(text, column, valueColumns[column]!, tell);
  }
  const complete = what === 'length-weight' ? withCovariance(fields, tell) : fields;
  if (what === 'conversion') requireRatio(hand, tell);
  const parsed = valueContentSchema.safeParse(complete);
  if (!parsed.success) return null;
  if (parsed.data.what === 'length-weight') requirePossible(parsed.data, tell);
  return parsed.data;
}

/** All three, or none of them: half a covariance says nothing. */
function withCovariance(fields: Record<string, unknown>, tell: Tell): Record<string, unknown> {
  const { lnAVariance, lnABCovariance, bVariance, ...rest } = fields;
  const given = [lnAVariance, lnABCovariance, bVariance].filter((value) => value !== null);
  if (given.length === 0) return { ...rest, covariance: null };
  const columns = ['ln_a_variance', 'ln_a_b_covariance', 'b_variance'];
  for (const [i, value] of [lnAVariance, lnABCovariance, bVariance].entries()) {
    if (value === null) tell('missing-value', columns[i]!);
  }
  return { ...rest, covariance: { lnAVariance, lnABCovariance, bVariance } };
}

/** A ratio, or both its bounds. */
function requireRatio(hand: RowInHand, tell: Tell): void {
  const [ratio, low, high] = ['ratio', 'ratio_low', 'ratio_high'].map(
    (column) => cellOf(hand, column) !== '',
  );
  if (!ratio && !(low && high)) tell('missing-value', 'ratio');
}

/** A pair in the wrong unit shows at once in the weight of one animal. */
function requirePossible(pair: LengthWeight, tell: Tell): void {
  const lengthMm = 200;
  const weightG = weightOfLengthG(lengthWeightLine(pair), lengthMm);
  if (pair.weightState !== 'live' || isPossibleWeight(lengthMm, weightG)) return;
  tell('pair-impossible', 'a', {
    value: pair.a,
    parameters: { lengthMm, weightG, ...possibleWeightsG(lengthMm) },
  });
}

function kindOf(text: string): ValueKind | null {
  const wanted = text.toLowerCase().replace(/[\s_]+/g, '-');
  return valueKinds.find((kind) => kind === wanted) ?? null;
}

function cellOf({ cells, header }: RowInHand, column: string): string {
  const at = header.get(column);
  return at === undefined ? '' : withoutGuard((cells[at] ?? '').trim());
}

/** Two rows for one thing with one source: the second would replace the first unseen. */
function repeated(values: readonly PlacedValue[], file: string): readonly Problem[] {
  const first = new Map<string, number>();
  return values.flatMap((value) => {
    const key = JSON.stringify([value.species.id, nameOfValue(value.content), value.source]);
    const before = first.get(key);
    if (before === undefined) first.set(key, value.row);
    const parameters = { firstRow: String(before) };
    const name = `${value.species.name}, ${nameOfValue(value.content)}`;
    return before === undefined
      ? []
      : [problemOf('repeated-row', { file, row: value.row }, { value: name, parameters })];
  });
}
