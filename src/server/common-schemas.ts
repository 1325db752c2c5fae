/** Parts of addresses that many routes share. */

import * as z from 'zod';
import type { Survey } from '../survey/words.ts';
import { Refusal } from './refusal.ts';
import type { House } from './route.ts';

export const surveyParams = z.object({ surveyId: z.uuid() });
export const scopes = z.enum(['survey', 'stratum', 'site', 'zone', 'station']);
/** In an address everything is text; an empty text is nothing. */
export const optionalText = z
  .string()
  .optional()
  .transform((text) => (text === undefined || text === '' ? null : text));
export const optionalId = z
  .uuid()
  .or(z.literal(''))
  .optional()
  .transform((id) => id || null);

/** Throws a refusal when the survey is not in the book. */
export async function surveyOf({ store }: House, surveyId: string): Promise<Survey> {
  const survey = (await store.all('survey')).find((one) => one.id === surveyId);
  if (survey === undefined) throw new Refusal('no-such-survey');
  return survey;
}

/** What the work on sheets needs, at this moment. */
export function toolsNow({ store, sha256, now, device }: House) {
  const digest = (text: string) => sha256(text).slice(0, 32);
  return { store, digest, at: now().toISOString(), device };
}
