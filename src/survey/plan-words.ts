/**
 * A plan of a survey as the book keeps it: what was asked, how the stations were drawn, what happened to each
 * since, and where the belts lie. Everything needed to make the draw again stands in it.
 */

import * as z from 'zod';

const text = z.string().min(1);
const localDate = z.iso.date();

/** WGS84, north and east positive. */
export const positionSchema = z.object({
  latitudeDeg: z.number().min(-90).max(90),
  longitudeDeg: z.number().min(-180).max(180),
});

/** One belt of a planned station. */
export const plannedBeltSchema = z.object({
  number: z.number().int().positive(),
  start: positionSchema,
  end: positionSchema,
  trueBearingDeg: z.number().min(0).max(360),
  magneticBearingDeg: z.number().min(0).max(360),
});

export const plannedStationSchema = z.object({
  code: text,
  stratum: text,
  position: positionSchema,
  /** Hand-picked is for life: no later draw washes it off. */
  selection: z.enum(['random', 'fixed', 'hand-picked']),
  role: z.enum(['planned', 'spare', 'dropped']),
  /** The code of the dropped station whose place it took. */
  replaces: text.nullable(),
  belts: z.array(plannedBeltSchema),
  /** Share of the laid length inside the stratum and off the masks; null before the belts are laid. */
  shareInside: z.number().min(0).max(1).nullable(),
  /** How it was laid; missing before that. East positive: true = magnetic + declination. */
  laying: z
    .object({
      declinationDeg: z.number(),
      /** Room to both sides of the first bearing before a belt leaves its ground; 180 where nothing is near. */
      slackDeg: z.number().min(0).max(180),
      startsInside: z.boolean(),
      /** Turn before the second belt and every further one, positive to starboard; all 0 for a straight series. */
      turnsDeg: z.array(z.number()),
    })
    .optional(),
});
export type PlannedStation = z.infer<typeof plannedStationSchema>;

export const planContentSchema = z.object({
  /** The survey the plan is for, by name; it may not be in the book yet. */
  survey: text.nullable(),
  /** What must be decided, in the officer's words. */
  decision: text.nullable(),
  protocol: text.nullable(),
  /** Draw, replacement, laying: what was asked of each, with its date and person. */
  seed: z.number().int().nonnegative(),
  method: z.enum(['acceptance', 'pivotal']),
  minimumSpacingM: z.number().positive().nullable(),
  drawnOn: localDate,
  drawnBy: text,
  strata: z.array(
    z.object({
      name: text,
      areaHa: z.number().positive(),
      maskedHa: z.number().nonnegative(),
      stations: z.number().int().nonnegative(),
      spares: z.number().int().nonnegative(),
      /** What each mask took before the draw. */
      dropped: z.array(z.object({ name: text, why: text, areaHa: z.number() })).optional(),
      /** Voronoi balance of its stations, and of simple random ones of the same number on the same ground. */
      balance: z
        .object({
          drawn: z.number(),
          simpleRandom: z.number(),
          /** Share of simple random draws that were spread at least as well. */
          shareAsGood: z.number(),
          simpleDraws: z.number().int().positive(),
        })
        .optional(),
      /** What the minimum spacing did to the chances of the ground, over those without it. */
      spacing: z
        .object({
          lowestRatio: z.number(),
          highestRatio: z.number(),
          noise: z.number(),
          redraws: z.number().int().positive(),
          failed: z.number().int().nonnegative(),
        })
        .optional(),
    }),
  ),
  /** How the stations were divided over the strata, in words; missing where every number was typed. */
  allocation: text.optional(),
  /** The earlier survey whose stations are visited again. */
  revisits: text.optional(),
  stations: z.array(plannedStationSchema),
  passedOver: z.array(
    z.object({ stratum: text, position: positionSchema, tooNearTo: text, distanceM: z.number() }),
  ),
  replacements: z.array(
    z.object({
      dropped: text,
      replacement: text.nullable(),
      stratum: text,
      reason: text,
      who: text,
      date: localDate,
    }),
  ),
  laid: z
    .object({
      on: localDate,
      /** The day the declination is for. */
      forDate: localDate,
      beltLengthM: z.number().positive(),
      beltWidthM: z.number().positive().nullable(),
      gapM: z.number().nonnegative(),
      belts: z.number().int().positive(),
      declinationModel: text,
      validFromYear: z.number().optional(),
      validToYear: z.number().optional(),
      by: text.optional(),
    })
    .nullable(),
});
export type PlanContent = z.infer<typeof planContentSchema>;

export const mapRingSchema = z.array(positionSchema);

/** What an area on the map is for. */
export const mapAreaRoles = ['stratum', 'mask', 'zone'] as const;

export const mapAreaContentSchema = z.object({
  area: z.object({
    parts: z.array(z.object({ outer: mapRingSchema, holes: z.array(mapRingSchema) })),
  }),
  /** Why a mask is no ground: land, closed, too deep. Null for a stratum or zone. */
  reason: text.nullable(),
  /** The file it came from, without its folder. */
  source: text.nullable(),
  /** The day on which the borders were fixed, before any result was seen; null while they may move. */
  frozenOn: localDate.nullable(),
});
