/** What the screens ask about the book, its surveys and their stations, and how a new survey is made. */

import * as z from 'zod';
import { dayContentSchema } from '../../survey/day-words.ts';
import {
  protocolSchema,
  sizeLimitSchema,
  speciesSchema,
  stratumSchema,
  surveySchema,
} from '../../survey/words.ts';
import { savedBy, uuid } from './sheet-schemas.ts';

export const bookSchema = z.object({
  bookId: z.string(),
  name: z.string(),
  /** The invented demo book says so on every screen. */
  invented: z.boolean(),
  createdAt: z.string(),
  version: z.string(),
  dataVersion: z.string(),
  device: z.string(),
  /** The day on the wall of the server, ISO form. */
  today: z.string(),
});
export type Book = z.infer<typeof bookSchema>;

export const surveyRowSchema = z.object({
  survey: surveySchema,
  protocol: z.string().nullable(),
  stations: z.number().int(),
});
export type SurveyRow = z.infer<typeof surveyRowSchema>;
export const surveyListSchema = z.object({ dataVersion: z.string(), surveys: z.array(surveyRowSchema) });

/** Everything a sheet of this survey can name; enough for the screen to type, check and compute offline. */
export const surveyWordsSchema = z.object({
  dataVersion: z.string(),
  survey: surveySchema,
  protocol: protocolSchema.nullable(),
  strata: z.array(stratumSchema),
  /** Every species of the book, with codes, local names and aliases. */
  species: z.array(speciesSchema),
  /** Species identities looked for in this survey. */
  targets: z.array(uuid),
  targetsMadeFrom: z.enum(['declared', 'seen under this protocol', 'species list']),
  limits: z.array(sizeLimitSchema),
  /** Names used before in this survey, for suggestions. */
  sites: z.array(z.string()),
  zones: z.array(z.string()),
  recorders: z.array(z.string()),
});
export type SurveyWords = z.infer<typeof surveyWordsSchema>;

export const missingCodes = [
  'no-transects',
  'fewer-transects',
  'blank-transect',
  'partial-without-reason',
  'selection-unknown',
] as const;
export type MissingCode = (typeof missingCodes)[number];

export const stationRowSchema = z.object({
  id: uuid,
  code: z.string(),
  site: z.string().nullable(),
  stratum: z.string(),
  zone: z.string().nullable(),
  date: z.string(),
  timeStart: z.string().nullable(),
  timeEnd: z.string().nullable(),
  recorder: z.string().nullable(),
  selection: z.string().nullable(),
  transects: z.number().int(),
  /** As the protocol plans them; null where it does not say. */
  plannedTransects: z.number().int().nullable(),
  animals: z.number().int(),
  measured: z.number().int(),
  searchedAreaM2: z.number(),
  state: z.enum(['done', 'missing']),
  missing: z.array(
    z.object({ code: z.enum(missingCodes), transect: z.string().nullable(), message: z.string() }),
  ),
});
export type StationRow = z.infer<typeof stationRowSchema>;
export const stationListSchema = z.object({ dataVersion: z.string(), stations: z.array(stationRowSchema) });

/**
 * A new survey in one act. Records that the book holds already (a stratum, a species, a protocol) are sent as they
 * stand; what is new comes with an identity made by the screen. Targets are species identities.
 */
export const newSurveySchema = z.object({
  ...savedBy,
  why: savedBy.why.unwrap().default('new survey'),
  survey: surveySchema,
  protocol: protocolSchema.nullable(),
  strata: z.array(stratumSchema).max(1000),
  species: z.array(speciesSchema).max(5000),
  targets: z.array(uuid).max(5000),
});
export type NewSurvey = z.infer<typeof newSurveySchema>;
export type NewSurveyRequest = z.input<typeof newSurveySchema>;

/** New strata, species and targets for a survey that stands: a species nobody had listed, met on the reef. */
export const addWordsSchema = newSurveySchema
  .omit({ survey: true, protocol: true })
  .extend({ why: savedBy.why.unwrap().default('words added') });
export type AddWords = z.infer<typeof addWordsSchema>;
export type AddWordsRequest = z.input<typeof addWordsSchema>;

/** One boat day; see `survey/day-words.ts` for its content. */
export const saveDaySchema = z.object({
  ...savedBy,
  why: savedBy.why.unwrap().default('day typed'),
  /** Identity of a new day; a day that stands keeps its own. */
  id: uuid,
  content: dayContentSchema,
});
export type SaveDay = z.infer<typeof saveDaySchema>;

/** Added up and compared with limits the officer typed. No decompression is computed, ever. */
export const diverDaySchema = z.object({
  diver: z.string(),
  dives: z.number().int(),
  minutes: z.number(),
  maxDepthM: z.number().nullable(),
  /** Between one dive and the next; null with one dive. */
  shortestIntervalMin: z.number().nullable(),
  over: z.array(
    z.object({
      limit: z.enum(['divesPerDay', 'minutesPerDay', 'surfaceIntervalMin', 'maxDepthM']),
      typed: z.number(),
      found: z.number(),
      message: z.string(),
    }),
  ),
});
export type DiverDay = z.infer<typeof diverDaySchema>;
export const dayInBookSchema = z.object({
  /** Null while nothing is written for this day. */
  revision: z.string().nullable(),
  id: uuid.nullable(),
  date: z.string(),
  content: dayContentSchema.nullable(),
  divers: z.array(diverDaySchema),
});
export type DayInBook = z.infer<typeof dayInBookSchema>;
export const dayListSchema = z.object({ dataVersion: z.string(), days: z.array(dayInBookSchema) });
export const staleDaySchema = z.object({
  code: z.literal('day-changed'),
  message: z.string(),
  theirs: dayInBookSchema,
});
