/** What a boat day was like, as the book keeps it: sea, fuel, dives, incidents. Times are only added up; nothing here computes decompression. */

import * as z from 'zod';

const text = z.string().min(1);
const optionalText = text.nullable();
const amount = z.number().nonnegative().nullable();
const localTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);

export const dayContentSchema = z.object({
  sea: optionalText,
  visibilityM: amount,
  habitat: optionalText,
  notes: optionalText,
  incidents: z.array(z.object({ time: localTime.nullable(), what: text })),
  fuelUsedL: amount,
  /** People are roles: "Diver 1", never names in what leaves the office. */
  dives: z.array(
    z.object({
      diver: text,
      entry: localTime,
      exit: localTime,
      maxDepthM: z.number().nonnegative().nullable(),
    }),
  ),
  /** Limits typed by the officer from the service's own dive rules; null where none was typed. */
  limits: z.object({
    divesPerDay: amount,
    minutesPerDay: amount,
    surfaceIntervalMin: amount,
    maxDepthM: amount,
  }),
});
export type DayContent = z.infer<typeof dayContentSchema>;
