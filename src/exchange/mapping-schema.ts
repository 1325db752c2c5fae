/** Mapping files: how somebody else's files fill our tables. The handbook's `mapping-files.md` explains each word. */

import * as z from 'zod';
import { nearestName } from '../survey/nearest-name.ts';
import { tableNames } from '../survey/table-rows.ts';
import { namesRead } from './table-columns.ts';
import { tableDefinitions } from './table-definitions.ts';

const name = z.string().min(1);
const names = z.array(name).min(1);
const cellText = z.union([z.string(), z.number()]).transform(String);
const oneOrMore = z.union([cellText.transform((one) => [one]), z.array(cellText).min(1)]);
const pattern = name.refine(isPattern, { error: 'a regular expression' });

/** A list of theirs that says what is called how: a file given with the others, or a sheet of a workbook. */
const listFile = { file: name, sheet: name.optional() };

/** Words from a list file: what stands in `from` is read as what stands in `to`. */
const synonymsSchema = z.strictObject({ ...listFile, from: name, to: name });

/** How numbers are read that say more than a number; a kind that is not named stays a question. */
const approximateSchema = z.strictObject({
  /** `12-14` */
  range: z.enum(['low', 'middle', 'high']).optional(),
  /** `~20`, `20?` */
  about: z.literal('the number').optional(),
  /** `<1` */
  below: z.enum(['half', 'the number']).optional(),
  /** `>50`, `50+` */
  above: z.literal('the number').optional(),
});

const fromSchema = z.strictObject({
  from: name,
  /** Their columns to look in, in this order, where nothing was written. */
  otherwise: oneOrMoreNames(),
  /** The unit their number is in, when it is not ours; `as written`: every cell says its own. */
  unit: z.enum(['mm', 'cm', 'm', 'km', 'm2', 'ha', 'km2', 'g', 'kg', 'as written']).optional(),
  /** Their word to ours. A word that is not listed stays as it is. */
  values: z.record(z.string(), cellText).optional(),
  /** The same from a file, for words that `values` does not list. */
  synonyms: synonymsSchema.optional(),
  /** Capitals do not count in `values` and `synonyms`. */
  ignoreCase: z.boolean().default(false),
  /** What becomes of a word that neither lists: it stays, or it stays and is asked about. */
  unlisted: z.enum(['stays', 'ask']).default('stays'),
  /** Texts that mean nothing was written. */
  missing: z.array(cellText).optional(),
  /** The part of their text that is meant: the first group of a regular expression. */
  pick: pattern.optional(),
  /** Forms of a day, tried in this order: `D/M/YYYY`, `M/D/YY`, `D MMM YYYY`, `serial`. */
  dateForms: z.union([name.transform((one) => [one]), names]).optional(),
  /** Which day of a range such as `16-17 Sept 2011` stands for it. */
  dateRange: z.enum(['first', 'last']).optional(),
  approximate: approximateSchema.optional(),
});
export type FromSource = z.infer<typeof fromSchema>;

const constantSchema = z.strictObject({ constant: cellText });

/** Where the text of one of our columns comes from. */
const columnSourceSchema = z.union([
  name,
  constantSchema,
  z.strictObject({
    join: z.array(z.union([name, constantSchema, fromSchema])).min(1),
    separator: z.string().default(' '),
  }),
  /** Different texts in `number` are numbered 1, 2, 3 within each group of equal texts in `within`, as they come. */
  z.strictObject({ number: names, within: names, ignoreCase: z.boolean().default(false) }),
  /** What a list file says in the row that agrees in all columns of `match` (theirs in the list: theirs here). */
  z.strictObject({
    lookUp: z.strictObject({ ...listFile, match: z.record(name, name), take: name }),
    ignoreCase: z.boolean().default(false),
    values: z.record(z.string(), cellText).optional(),
  }),
  fromSchema,
]);
export type ColumnSource = z.infer<typeof columnSourceSchema>;

function oneOrMoreNames() {
  return z.union([name.transform((one) => [one]), names]).optional();
}

const conditionShape = {
  column: name,
  equals: oneOrMore.optional(),
  matches: pattern.optional(),
  blank: z.boolean().optional(),
};
const oneTest = { error: 'exactly one of equals, matches, blank' };

/** A test of their cells. */
const conditionSchema = z.strictObject(conditionShape).refine(hasOneTest, oneTest);
export type Condition = z.infer<typeof conditionSchema>;

/** Rows that are left out, under a name that is reported with their number. */
const leaveOutSchema = z.union([
  z.strictObject({ rule: name, repeats: names }),
  z.strictObject({ rule: name, ...conditionShape }).refine(hasOneTest, oneTest),
]);
export type LeaveOut = z.infer<typeof leaveOutSchema>;

/** Rows that are read and that a person should look at. */
const askSchema = z
  .strictObject({ rule: name, ...conditionShape, show: name.optional() })
  .refine(hasOneTest, oneTest);
export type Ask = z.infer<typeof askSchema>;

const fillSchema = z
  .strictObject({
    table: z.enum(tableNames),
    columns: z.record(name, columnSourceSchema),
    /** Only rows that pass every test concern this table. */
    where: z.array(conditionSchema).default([]),
    leaveOut: z.array(leaveOutSchema).default([]),
    /** Equal rows are one row: stations out of a file of transects. */
    distinct: z.boolean().default(false),
    /** With `distinct`: our columns of which the first value stays when later rows differ. */
    firstOf: z.array(name).default([]),
    /** Rows of counts about the same animals of the same transect are added. */
    add: z.boolean().default(false),
  })
  .check(checkColumns);
export type TableFill = z.infer<typeof fillSchema>;

const sourceSchema = z.strictObject({
  /** File name without folders; `*` stands for any letters. */
  file: name,
  sheet: name.optional(),
  /** The row of the header, as the spreadsheet counts, where it is not the first that has all columns. */
  headerRow: z.number().int().positive().optional(),
  /** The last row of the table; what stands below is left out and counted. */
  lastRow: z.number().int().positive().optional(),
  /** What a comma in numbers is, where the file itself does not prove it: `point` means that 1,234 is 1234. */
  decimal: z.enum(['comma', 'point']).optional(),
  /** `repeat`: the value of merged cells stands in every one of them. */
  mergedCells: z.literal('repeat').optional(),
  /** Texts that mean nothing was written, anywhere in this file. */
  missing: z.array(cellText).default([]),
  leaveOut: z.array(leaveOutSchema).default([]),
  ask: z.array(askSchema).default([]),
  fill: z.array(fillSchema).min(1),
});
export type Source = z.infer<typeof sourceSchema>;

export const mappingFileSchema = z.strictObject({
  name,
  note: z.string().optional(),
  /** Rows that no file holds, column by column as in our tables. */
  given: z.partialRecord(z.enum(tableNames), z.array(z.record(name, cellText))).default({}),
  sources: z.array(sourceSchema).min(1),
  /** The species the divers looked for. */
  targets: z
    .union([z.literal('every counted species in every survey'), names, z.record(name, names)])
    .optional(),
  /** What a transect without any count means. */
  blankTransects: z.enum(['unresolved', 'none seen']).default('unresolved'),
});
export type Mapping = z.infer<typeof mappingFileSchema>;

function hasOneTest(condition: { equals?: unknown; matches?: unknown; blank?: unknown }): boolean {
  return (
    [condition.equals, condition.matches, condition.blank].filter((test) => test !== undefined).length === 1
  );
}

function isPattern(source: string): boolean {
  try {
    return new RegExp(source) !== null;
  } catch {
    return false;
  }
}

/** Our columns must be ours, and `firstOf` and `add` only where they mean something. */
function checkColumns(payload: z.core.ParsePayload<TableFillShape>): void {
  const { table, columns, firstOf, add, distinct } = payload.value;
  const known = namesRead(tableDefinitions[table]);
  const wrong = [...Object.keys(columns).map((c) => ['columns', c]), ...firstOf.map((c) => ['firstOf', c])];
  for (const path of wrong.filter((entry) => !known.includes(entry[1]!))) {
    payload.issues.push({
      code: 'custom',
      path,
      input: path[1],
      message: `a column of ${table}: ${known.join(', ')}`,
      params: { suggestion: nearestName(path[1]!, known) },
    });
  }
  if (add && table !== 'counts') {
    payload.issues.push({ code: 'custom', path: ['add'], input: add, message: 'only with the table counts' });
  }
  if (distinct && tableDefinitions[table].key === null) {
    payload.issues.push({
      code: 'custom',
      path: ['distinct'],
      input: distinct,
      message: `not with the table ${table}`,
    });
  }
}

interface TableFillShape {
  readonly table: (typeof tableNames)[number];
  readonly columns: Readonly<Record<string, unknown>>;
  readonly firstOf: readonly string[];
  readonly add: boolean;
  readonly distinct: boolean;
}
