/**
 * The words of the work: what a survey book holds, as plain values.
 *
 * Here live the records an officer would recognise, with the unit at the end of
 * every name. Nothing here knows a file, a database, a screen or a formula.
 * Schemas are the single source of the types: a record that came from another
 * laptop is parsed by them before it is believed.
 */

import * as z from 'zod';
import { dayContentSchema } from './day-words.ts';
import { checksumSchema, photoContentSchema } from './photo-words.ts';
import { mapAreaContentSchema, mapAreaRoles, planContentSchema } from './plan-words.ts';
import { valueContentSchema } from './value-words.ts';

const id = z.uuid();
const text = z.string().min(1);
const optionalText = z.string().min(1).nullable();
const positive = z.number().positive();
const optionalPositive = z.number().positive().nullable();
const optionalNumber = z.number().nullable();
/** Calendar day as the team wrote it, ISO form: local to the survey, no time zone. */
const localDate = z.iso.date();
/** Wall-clock time of the team, HH:MM. */
const localTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);

/** A habitat patch or class with an area: stations are drawn inside it, answers are weighted by it. */
export const stratumSchema = z.object({
  id,
  name: text,
  habitat: optionalText,
  /** From the polygon when there is one; null while unknown, which holds back the whole-survey estimate. */
  areaHa: optionalPositive,
  depthMinM: optionalNumber,
  depthMaxM: optionalNumber,
});
export type Stratum = z.infer<typeof stratumSchema>;

export const layouts = ['series', 'parallel', 'quadrats', 'timed'] as const;

/** How a station is worked. A changed rule is a new protocol, never an edit of the old one. */
export const protocolSchema = z.object({
  id,
  name: text,
  layout: z.enum(layouts).nullable(),
  transectsPerStation: z.number().int().positive().nullable(),
  lengthM: optionalPositive,
  widthM: optionalPositive,
  gapM: z.number().nonnegative().nullable(),
  /** Animals of one species measured on one transect before the diver only counts. */
  measureFirst: z.number().int().positive().nullable(),
  lengthUnit: z.enum(['mm', 'cm']).nullable(),
});
export type Protocol = z.infer<typeof protocolSchema>;

/** One campaign of stations worked under one protocol. */
export const surveySchema = z.object({
  id,
  name: text,
  protocolId: id.nullable(),
  starts: localDate.nullable(),
  ends: localDate.nullable(),
  purpose: optionalText,
});
export type Survey = z.infer<typeof surveySchema>;

export const positionSources = ['gps', 'map', 'landmark'] as const;
export const modes = ['scuba', 'snorkel', 'walking', 'towed'] as const;
export const selections = ['random', 'fixed', 'hand-picked'] as const;
export type Selection = (typeof selections)[number];

/** The sampling unit: one place worked once in one survey. */
export const stationSchema = z.object({
  id,
  surveyId: id,
  code: text,
  site: optionalText,
  stratumId: id,
  /** A management area that may cut across strata. */
  zone: optionalText,
  date: localDate,
  timeStart: localTime.nullable(),
  timeEnd: localTime.nullable(),
  latitudeDeg: z.number().min(-90).max(90).nullable(),
  longitudeDeg: z.number().min(-180).max(180).nullable(),
  endLatitudeDeg: z.number().min(-90).max(90).nullable(),
  endLongitudeDeg: z.number().min(-180).max(180).nullable(),
  plannedLatitudeDeg: z.number().min(-90).max(90).nullable(),
  plannedLongitudeDeg: z.number().min(-180).max(180).nullable(),
  positionSource: z.enum(positionSources).nullable(),
  waypoint: optionalText,
  bearingDeg: z.number().min(0).max(360).nullable(),
  depthM: optionalNumber,
  mode: z.enum(modes).nullable(),
  night: z.boolean().nullable(),
  visibilityM: z.number().nonnegative().nullable(),
  tide: optionalText,
  current: optionalText,
  recorder: optionalText,
  navigator: optionalText,
  /** How the place was chosen; null when nobody wrote it down. */
  selection: z.enum(selections).nullable(),
  note: optionalText,
});
export type Station = z.infer<typeof stationSchema>;

export const transectStatuses = ['done', 'partial', 'lost', 'not done'] as const;
export type TransectStatus = (typeof transectStatuses)[number];

/** One swim of one belt (or quadrat) within a station; swim 2 is a calibration repeat. */
export const transectSchema = z.object({
  id,
  stationId: id,
  code: text,
  swim: z.number().int().positive(),
  /** Names of species or groups that were looked for; empty means all targets of the survey. */
  scope: z.array(text),
  /** For a partial transect the length actually searched. Null only in timed searches. */
  lengthM: optionalPositive,
  widthM: optionalPositive,
  depthStartM: optionalNumber,
  depthEndM: optionalNumber,
  cover: z.array(z.object({ name: text, percent: z.number().min(0).max(100) })),
  status: z.enum(transectStatuses),
  reason: optionalText,
  /** The diver marked the box "none seen". */
  noneSeen: z.boolean(),
  note: optionalText,
});
export type Transect = z.infer<typeof transectSchema>;

export const lengthMeasures = ['body relaxed', 'body contracted', 'basal diameter', 'shell length'] as const;
export type LengthMeasure = (typeof lengthMeasures)[number];

/** `n` animals of one measured length. */
export const lengthSchema = z.object({
  lengthMm: positive,
  n: z.number().int().positive(),
  measure: z.enum(lengthMeasures).nullable(),
  photo: optionalText,
});
export type Length = z.infer<typeof lengthSchema>;

/** One species on one transect: the total count, measured animals included, and their lengths. */
export const tallySchema = z.object({
  id,
  transectId: id,
  speciesId: id,
  count: z.number().int().nonnegative(),
  lengths: z.array(lengthSchema),
});
export type Tally = z.infer<typeof tallySchema>;

export const speciesSchema = z.object({
  id,
  name: text,
  group: optionalText,
  code: optionalText,
  commonName: optionalText,
  localName: optionalText,
  aliases: z.array(text),
  minLengthMm: optionalPositive,
  maxLengthMm: optionalPositive,
  depthMinM: optionalNumber,
  depthMaxM: optionalNumber,
  habitats: z.array(text),
});
export type Species = z.infer<typeof speciesSchema>;

export const weightStates = ['live', 'gutted', 'salted', 'dried'] as const;

/** One animal measured and weighed. */
export const weightSchema = z.object({
  id,
  surveyId: id,
  stationCode: optionalText,
  speciesId: id,
  /** Order within its survey, station and species, so that two equal animals stay two. */
  ordinal: z.number().int().positive(),
  lengthMm: positive,
  weightG: positive,
  state: z.enum(weightStates).nullable(),
  drainMinutes: z.number().nonnegative().nullable(),
});
export type Weight = z.infer<typeof weightSchema>;

/** A species the divers of one survey looked for. */
export const targetSchema = z.object({ id, surveyId: id, speciesId: id });
export type Target = z.infer<typeof targetSchema>;

/** A legal or agreed minimum size, with the authority that set it. */
export const sizeLimitSchema = z.object({
  id,
  speciesId: id,
  minimumMm: positive,
  source: text,
});
export type SizeLimit = z.infer<typeof sizeLimitSchema>;

/** A mapping file as it was used, kept so that the import can be repeated. */
export const mappingSchema = z.object({ id, name: text, content: text });
export type Mapping = z.infer<typeof mappingSchema>;

/**
 * What a person said about a problem. It stays with the problem for as long as the value it was given for
 * stands; a changed value opens the question again.
 */
export const answerSchema = z.object({
  id,
  problemKey: text,
  code: text,
  /** The value in question as text when it was answered; null when the question was about something missing. */
  value: optionalText,
  answer: text,
  who: text,
  why: text,
  /** ISO instant in UTC. */
  answeredAt: z.iso.datetime(),
});
export type Answer = z.infer<typeof answerSchema>;

/** A stratum, zone or mask as drawn on the map. A stratum's area bears the stratum's name. */
export const mapAreaSchema = z.object({
  id,
  name: text,
  role: z.enum(mapAreaRoles),
  content: mapAreaContentSchema,
});
export type MapAreaRecord = z.infer<typeof mapAreaSchema>;

/** A plan of a survey with its draw; see `plan-words.ts`. */
export const planSchema = z.object({ id, name: text, content: planContentSchema });
export type Plan = z.infer<typeof planSchema>;

/** A value the officer brought, with its source; see `value-words.ts`. It stands before the built-in one. */
export const ownValueSchema = z.object({
  id,
  speciesId: id,
  what: text,
  source: text,
  content: valueContentSchema,
});
export type OwnValue = z.infer<typeof ownValueSchema>;

/** One boat day of one survey; see `day-words.ts`. */
export const daySchema = z.object({ id, surveyId: id, date: localDate, content: dayContentSchema });
export type Day = z.infer<typeof daySchema>;

/** One photo, mostly of a slate; see `photo-words.ts`. Without a station while nobody has said whose it is. */
export const photoSchema = z.object({
  id,
  sha256: checksumSchema,
  surveyId: id.nullable(),
  stationId: id.nullable(),
  content: photoContentSchema,
});
export type Photo = z.infer<typeof photoSchema>;

/** Every kind of record, in an order in which each refers only to kinds before it. */
export const recordSchemas = {
  stratum: stratumSchema,
  protocol: protocolSchema,
  species: speciesSchema,
  survey: surveySchema,
  station: stationSchema,
  transect: transectSchema,
  tally: tallySchema,
  weight: weightSchema,
  target: targetSchema,
  sizeLimit: sizeLimitSchema,
  mapping: mappingSchema,
  answer: answerSchema,
  mapArea: mapAreaSchema,
  plan: planSchema,
  ownValue: ownValueSchema,
  day: daySchema,
  photo: photoSchema,
} as const;

export type RecordKind = keyof typeof recordSchemas;
export const recordKinds = Object.keys(recordSchemas) as readonly RecordKind[];
export type RecordOf<K extends RecordKind> = z.infer<(typeof recordSchemas)[K]>;
