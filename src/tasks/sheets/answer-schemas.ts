/** What the screens ask back: questions and their answers, history, numbers, long work. */

import * as z from 'zod';
import { savedBy, shortText, uuid } from './sheet-schemas.ts';

const text = z.string().nullable();
const number = z.number().nullable();
const interval = z.tuple([z.number(), z.number()]).nullable();
const scope = z.object({ by: z.enum(['survey', 'stratum', 'site', 'zone', 'station']), name: z.string() });

/** One error of any route: a code for programs, a sentence for people. */
export const errorSchema = z.object({
  code: z.string(),
  message: z.string(),
  /** With `request-invalid`: each field and what would be right. */
  fields: z.array(z.object({ field: z.string(), message: z.string() })).optional(),
});
export type ErrorAnswer = z.infer<typeof errorSchema>;

/** What somebody said about a question, and when (ISO instant). */
const givenAnswerSchema = z.object({ answer: z.string(), who: z.string(), why: z.string(), at: z.string() });
export type GivenAnswer = z.infer<typeof givenAnswerSchema>;

export const problemRowSchema = z.object({
  code: z.string(),
  severity: z.enum(['stop', 'explain', 'note']),
  message: z.string(),
  station: text,
  transect: text,
  swim: number,
  species: text,
  value: z.union([z.string(), z.number()]).nullable(),
  suggestion: text,
  /** Of the station, so that the sheet is one key away; null where the question is not about one. */
  stationId: uuid.nullable(),
  answer: givenAnswerSchema.nullable(),
});
export type ProblemRow = z.infer<typeof problemRowSchema>;
export const problemListSchema = z.object({ dataVersion: z.string(), problems: z.array(problemRowSchema) });

export const giveAnswerSchema = z.object({
  requestId: savedBy.requestId,
  code: z.string().min(1),
  station: text.default(null),
  transect: text.default(null),
  swim: z.number().int().positive().nullable().default(null),
  species: text.default(null),
  value: text.default(null),
  /** When the answer was given that the screen had in hand; null while the question was open. Left out, nothing is compared. */
  base: z.iso.datetime().nullable().optional(),
  answer: shortText,
  who: shortText,
  why: shortText,
  device: savedBy.device,
});
export type GiveAnswerRequest = z.input<typeof giveAnswerSchema>;
export const answeredSchema = z.object({
  answered: z.number().int(),
  markedNoneSeen: z.number().int(),
  dataVersion: z.string(),
});
export type Answered = z.infer<typeof answeredSchema>;

/** Somebody else answered in between: nothing was written. */
export const staleAnswerSchema = z.object({
  code: z.literal('answer-changed'),
  message: z.string(),
  theirs: givenAnswerSchema,
});

const cell = z.union([z.string(), z.number(), z.boolean()]).nullable();
export const historyListSchema = z.object({
  dataVersion: z.string(),
  leftOut: z.number().int(),
  rows: z.array(
    z.object({
      at: z.string(),
      who: z.string(),
      device: z.string(),
      why: z.string(),
      what: z.enum(['entered', 'changed', 'withdrawn']),
      table: z.string(),
      record: z.record(z.string(), z.union([z.string(), z.number()])),
      recordId: z.string(),
      changes: z.array(z.object({ column: z.string(), before: cell, after: cell })),
      clockBehind: z.boolean(),
    }),
  ),
});

export const densityRowSchema = z.object({
  survey: z.string(),
  species: z.string(),
  /** What people call it; the scientific name where nobody wrote another. */
  name: z.string(),
  scope,
  stations: z.number().int(),
  stationsWithSpecies: z.number().int(),
  animals: z.number().int(),
  searchedAreaM2: z.number(),
  densityPerHa: number,
  standardErrorPerHa: number,
  /** Standard error over density, in percent; null where either is unknown or nothing was seen. */
  coefficientOfVariationPercent: number,
  degreesOfFreedom: number,
  intervalPerHa: interval,
  intervalMethod: text,
  scatteredBoundPerHa: number,
  areaHa: number,
  totalAnimals: number,
  totalStandardError: number,
  totalInterval: interval,
  meanWherePresentPerHa: number,
  prevalence: number,
  prevalenceInterval: interval,
  estimators: z.array(z.object({ stratum: z.string(), estimator: z.string() })),
  /** For the fading band. */
  belief: z.object({ densityPerHa: z.array(z.number()), weight: z.array(z.number()) }).nullable(),
  reason: text,
  reasonCode: text,
  cautions: z.array(z.string()),
  leftOut: z.array(z.object({ station: z.string(), transect: text, reason: z.string() })),
});
export type DensityRow = z.infer<typeof densityRowSchema>;
export const densityListSchema = z.object({ dataVersion: z.string(), rows: z.array(densityRowSchema) });

export const sizesRowSchema = z.object({
  survey: z.string(),
  species: z.string(),
  /** What people call it; the scientific name where nobody wrote another. */
  name: z.string(),
  scope,
  animals: z.number().int(),
  measured: z.number().int(),
  meanLengthMm: number,
  standardErrorMm: number,
  shareAtLeast: z
    .object({ limitMm: z.number(), share: z.number(), standardError: number, interval })
    .nullable(),
  quantilesMm: z.record(z.string(), z.number()).nullable(),
  classes: z.array(
    z.object({ fromMm: z.number(), toMm: z.number(), share: z.number(), animals: z.number() }),
  ),
  borrowedAnimals: z.number(),
  reason: text,
});
export type SizesRow = z.infer<typeof sizesRowSchema>;
export const sizesListSchema = z.object({ dataVersion: z.string(), rows: z.array(sizesRowSchema) });

/** Where a number comes from: every station of the survey, its belts, and the animals on them. */
export const explainSchema = z.object({
  dataVersion: z.string(),
  survey: z.string(),
  species: z.string(),
  stations: z.array(
    z.object({
      id: uuid,
      code: z.string(),
      stratum: z.string(),
      date: z.string(),
      /** observed, not looked for, lost, or unresolved: only the first enters the estimate. */
      state: z.string(),
      animals: z.number().int(),
      searchedAreaM2: z.number(),
      densityPerHa: number,
      transects: z.array(
        z.object({
          id: uuid,
          code: z.string(),
          swim: z.number().int(),
          /** counted, zero, not looked for, lost, unresolved, or later swim. */
          state: z.string(),
          status: z.string(),
          areaM2: z.number(),
          count: z.number().int().nullable(),
          countedOnly: z.number().int().nullable(),
          lengthsMm: z.array(z.number()),
        }),
      ),
    }),
  ),
});
export type Explained = z.infer<typeof explainSchema>;

export const jobSchema = z.object({
  id: uuid,
  kind: z.enum(['report', 'import']),
  state: z.enum(['running', 'done', 'failed', 'cancelled']),
  /** What it does now, in words; and how far, from 0 to 1, where that can be known. */
  step: z.string(),
  share: number,
  /** With `failed`. */
  error: errorSchema.nullable(),
  startedAt: z.string(),
  endedAt: text,
});
export type Job = z.infer<typeof jobSchema>;
export const jobListSchema = z.object({ jobs: z.array(jobSchema) });
export const startReportSchema = z.object({
  surveyId: uuid,
  decision: z.string().max(500).nullable().default(null),
  positions: z.enum(['exact', 'rounded', 'none']).default('rounded'),
  classMm: z.number().min(1).max(1000).default(20),
});
