/**
 * A typed sheet as it travels between the screen and the book: one station with its transects and tallies.
 * The screen makes every identity (UUIDv7), so that a sheet typed offline needs no server to be whole.
 */

import * as z from 'zod';
import { stationSchema, tallySchema, transectSchema } from '../../survey/words.ts';

const uuid = z.uuid();
/** People are roles on the screens: "Recorder A". */
const shortText = z.string().trim().min(1).max(200);

export const sheetSchema = z
  .object({
    station: stationSchema,
    transects: z.array(transectSchema).max(500),
    tallies: z.array(tallySchema).max(20_000),
  })
  .superRefine((sheet, context) => {
    for (const { path, params } of inconsistencies(sheet)) context.addIssue({ code: 'custom', path, params });
  });
export type Sheet = z.infer<typeof sheetSchema>;

/** Every write says which request it is, what it was based on, and who stands for it. */
const savedBy = {
  /** Made by the screen, once for each save. It becomes the identity of the act: sent twice, it is written once. */
  requestId: uuid,
  /** The revision the screen had in hand; null for something new. */
  base: z.string().min(1).max(100).nullable(),
  who: shortText,
  why: shortText.default('sheet typed'),
  /** The device the sheet was typed on; the server's own name unless said. */
  device: shortText.nullable().default(null),
};

export const saveSheetSchema = z.object({ ...savedBy, sheet: sheetSchema });
export type SaveSheet = z.infer<typeof saveSheetSchema>;
/** What a screen sends: the fields with a default may be left out. */
export type SaveSheetRequest = z.input<typeof saveSheetSchema>;

/** A sheet typed by mistake: the reason is asked for. */
export const sheetAwaySchema = z.object({ ...savedBy, base: savedBy.base.unwrap(), why: shortText });
export type SheetAway = z.infer<typeof sheetAwaySchema>;

export const sheetInBookSchema = z.object({ revision: z.string(), sheet: sheetSchema });
export type SheetInBook = z.infer<typeof sheetInBookSchema>;

/** Sent only after it is on disk. */
export const savedSchema = z.object({
  /** To be sent as `base` with the next save. */
  revision: z.string(),
  dataVersion: z.string(),
  /** True when this request had been written before: nothing changed now. */
  repeated: z.boolean(),
  /** Records that this request wrote; 0 when the book held all of it already. */
  changed: z.number().int(),
});
export type Saved = z.infer<typeof savedSchema>;

const cell = z.union([z.string(), z.number(), z.boolean()]).nullable();
export const sheetDifferenceSchema = z.object({
  /** Null where the station itself differs. */
  transect: z.string().nullable(),
  swim: z.number().int().nullable(),
  /** Null where the belt itself differs. */
  speciesId: uuid.nullable(),
  /** A field of the station or belt; `transect` where only one sheet has the belt; `count` or `lengths` of a species. */
  field: z.string(),
  one: cell,
  other: cell,
});
export type SheetDifference = z.infer<typeof sheetDifferenceSchema>;

/** Somebody else saved in between: nothing was written, all sides are shown. */
export const staleSheetSchema = z.object({
  code: z.literal('sheet-changed'),
  message: z.string(),
  /** Null when they withdrew the station. */
  theirs: sheetInBookSchema.nullable(),
  yours: sheetSchema,
  /** What both began with, where the history still tells. */
  base: sheetSchema.nullable(),
  /** Cell by cell: `one` is theirs, `other` is yours. */
  differences: z.array(sheetDifferenceSchema),
});
export type StaleSheet = z.infer<typeof staleSheetSchema>;

export { savedBy, shortText, uuid };

interface Inconsistency {
  readonly path: (string | number)[];
  /** Told in the sentences of the server; see `report/catalogue/field-words.ts`. */
  readonly params: Readonly<Record<string, string>>;
}

/** A tally of a belt that is not on the sheet would be written into somebody else's. */
function inconsistencies(sheet: {
  readonly station: { readonly id: string };
  readonly transects: readonly { readonly id: string; readonly stationId: string }[];
  readonly tallies: readonly { readonly transectId: string; readonly speciesId: string }[];
}): readonly Inconsistency[] {
  const found: Inconsistency[] = [];
  const belts = new Set(sheet.transects.map((belt) => belt.id));
  sheet.transects.forEach((belt, i) => {
    if (belt.stationId === sheet.station.id) return;
    found.push({ path: ['transects', i, 'stationId'], params: { right: 'own-station' } });
  });
  const seen = new Set<string>();
  sheet.tallies.forEach((tally, i) => {
    const place = ['tallies', i];
    if (!belts.has(tally.transectId))
      found.push({ path: [...place, 'transectId'], params: { right: 'own-transect' } });
    const key = `${tally.transectId} ${tally.speciesId}`;
    if (seen.has(key)) found.push({ path: [...place, 'speciesId'], params: { said: 'twice' } });
    seen.add(key);
  });
  return found;
}
