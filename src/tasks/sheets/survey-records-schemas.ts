/**
 * Everything that the numbers and questions of one survey rest on, as it travels to a screen that must work them out
 * without the server: the records of the survey, the small tables of the book, and what earlier surveys counted.
 */

import * as z from 'zod';
import { recordSchemas } from '../../survey/words.ts';
import { uuid } from './sheet-schemas.ts';

/** One belt of an earlier survey: what its counts say about clumping, and nothing else. */
const earlierBeltSchema = z.object({
  status: recordSchemas.transect.shape.status,
  /** Left out where it is 1. */
  swim: z.number().int().positive().optional(),
  /** Left out where every target was looked for. */
  scope: z.array(z.string()).optional(),
  noneSeen: z.literal(true).optional(),
  lengthM: z.number().positive().nullable(),
  widthM: z.number().positive().nullable(),
  /** Pairs: the place of a species among `species`, then its count. */
  counts: z.array(z.number().int().nonnegative()),
});
export type EarlierBelt = z.infer<typeof earlierBeltSchema>;

export const surveyRecordsSchema = z.object({
  dataVersion: z.string(),
  surveyId: uuid,
  book: z.object({ bookId: z.string(), name: z.string(), invented: z.boolean(), createdAt: z.string() }),
  strata: z.array(recordSchemas.stratum),
  protocols: z.array(recordSchemas.protocol),
  species: z.array(recordSchemas.species),
  surveys: z.array(recordSchemas.survey),
  targets: z.array(recordSchemas.target),
  limits: z.array(recordSchemas.sizeLimit),
  answers: z.array(recordSchemas.answer),
  maps: z.array(recordSchemas.mapArea),
  plans: z.array(recordSchemas.plan),
  /** Stations of other surveys that were picked by hand: the checks compare places. */
  handPicked: z.array(recordSchemas.station),
  /** Of the surveys besides this one: species that have a tally. */
  seenElsewhere: z.array(z.object({ surveyId: uuid, speciesIds: z.array(uuid) })),
  stations: z.array(recordSchemas.station),
  transects: z.array(recordSchemas.transect),
  tallies: z.array(recordSchemas.tally),
  /** Surveys before this one under the same protocol: their stations in the order of their codes. */
  earlier: z.array(
    z.object({
      surveyId: uuid,
      stations: z.array(z.object({ stratumId: uuid, belts: z.array(earlierBeltSchema) })),
    }),
  ),
});
export type SurveyRecords = z.infer<typeof surveyRecordsSchema>;
export type EarlierSurvey = SurveyRecords['earlier'][number];
