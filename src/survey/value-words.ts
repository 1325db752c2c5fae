/**
 * Values that do not come from the survey itself: length-weight pairs, reference densities, conversions.
 * Each keeps its source and its status; the officer's own stand in the book and are told apart from the built-in list.
 */

import * as z from 'zod';

const text = z.string().min(1);
const positive = z.number().positive();
const optionalPositive = positive.nullable();
const states = z.enum(['live', 'gutted', 'salted', 'dried']);
const measures = z.enum(['body relaxed', 'body contracted', 'basal diameter', 'shell length']);

/** read: seen in the source; memory: never shown as a published fact; derived: arithmetic on read values; own: the officer's. */
export const valueStatuses = ['read', 'memory', 'derived', 'own'] as const;
export type ValueStatus = (typeof valueStatuses)[number];

/** How the animals behind a density were counted: a density of one is never set against a density of another. */
export const countMethods = [
  'belts',
  'quadrats',
  'timed search',
  'towed observer',
  'night search',
  'deep dive',
  'reef-front search',
  'not stated',
] as const;
export type CountMethod = (typeof countMethods)[number];

/** W = a L^b, with L in `lengthUnit` and W in `weightUnit`. */
const lengthWeightSchema = z.object({
  what: z.literal('length-weight'),
  a: positive,
  b: positive,
  lengthUnit: z.enum(['mm', 'cm']),
  weightUnit: z.enum(['g', 'kg']),
  weightState: states,
  lengthMeasure: measures.nullable(),
  /** The fitted range; null when the source does not tell it. */
  lengthMinMm: optionalPositive,
  lengthMaxMm: optionalPositive,
  /** Standard deviation of the residuals of ln W; null when not told, and then no correction is made. */
  residualSdLn: z.number().nonnegative().nullable(),
  /** Variances of ln a (in the given units) and b, and their covariance; null when not told. */
  covariance: z
    .object({
      lnAVariance: z.number().nonnegative(),
      lnABCovariance: z.number(),
      bVariance: z.number().nonnegative(),
    })
    .nullable(),
  animals: z.number().int().positive().nullable(),
});

/** One mean weight for the species, where no length-weight pair is known. */
const meanWeightSchema = z.object({
  what: z.literal('mean-weight'),
  weightG: positive,
  weightState: states,
  standardErrorG: z.number().nonnegative().nullable(),
  animals: z.number().int().positive().nullable(),
  /** Mean length of the animals that were weighed: mean weights of one species differ with it. */
  meanLengthMm: optionalPositive,
  place: text.nullable(),
});

const referenceDensitySchema = z.object({
  what: z.literal('reference-density'),
  densityPerHa: positive,
  /** Coefficient of variation of the reference itself; null when it is taken as exact. */
  cv: z.number().nonnegative().nullable(),
  method: z.enum(countMethods),
  beltWidthM: optionalPositive,
  place: text.nullable(),
  /** What the number means: the level of a healthy stock, a limit, an earlier level. */
  meaning: text,
});

/** How much of the live (or other) animal is left after processing. */
const conversionSchema = z.object({
  what: z.literal('conversion'),
  basis: z.enum(['weight', 'length']),
  from: states,
  to: states,
  /** Null where only bounds are known: then an answer is a range. */
  ratio: optionalPositive,
  ratioLow: optionalPositive,
  ratioHigh: optionalPositive,
});

const maturitySchema = z.object({
  what: z.literal('size-at-maturity'),
  lengthMm: positive,
  lengthMeasure: measures.nullable(),
  place: text.nullable(),
});

/**
 * A legal size as a country wrote it down, shown as an example only: laws change, and none is ever assumed.
 * What the officer brings in becomes a size limit of the book.
 */
const sizeLimitExampleSchema = z.object({
  what: z.literal('size-limit'),
  minimumMm: positive,
  /** Of the dried animal, where the rule names one. */
  minimumDriedMm: optionalPositive,
  maximumMm: optionalPositive,
  place: text,
});

/** Lengths that a catalogue gives for the species: what is common, and the longest. */
const usualLengthSchema = z.object({
  what: z.literal('usual-length'),
  commonMm: optionalPositive,
  maximumMm: optionalPositive,
  lengthMeasure: measures.nullable(),
});

export const valueContentSchema = z.discriminatedUnion('what', [
  lengthWeightSchema,
  meanWeightSchema,
  referenceDensitySchema,
  conversionSchema,
  maturitySchema,
  sizeLimitExampleSchema,
  usualLengthSchema,
]);
export type ValueContent = z.infer<typeof valueContentSchema>;
export type ValueKind = ValueContent['what'];
export type ValueOf<W extends ValueKind> = Extract<ValueContent, { what: W }>;

export type LengthWeight = ValueOf<'length-weight'>;
export type MeanWeight = ValueOf<'mean-weight'>;
export type Conversion = ValueOf<'conversion'>;

/** Every kind of value, in the order in which lists show them. */
export const valueKinds = [
  'length-weight',
  'mean-weight',
  'conversion',
  'reference-density',
  'size-at-maturity',
  'size-limit',
  'usual-length',
] as const satisfies readonly ValueKind[];

/**
 * The name of an own value within its species: what it is about, down to the state or the place. A record bears it
 * in its column `what`, so that one source may give the gutted and the dried share of one species.
 */
export function nameOfValue(content: ValueContent): string {
  const detail = detailOf(content);
  return [content.what, ...detail.filter((part) => part !== null)].join(', ');
}

function detailOf(content: ValueContent): readonly (string | null)[] {
  switch (content.what) {
    case 'length-weight':
      return [content.weightState];
    case 'mean-weight':
      return [content.weightState, content.place];
    case 'conversion':
      return [content.basis, `${content.from} to ${content.to}`];
    case 'reference-density':
      return [content.method, content.place];
    case 'size-at-maturity':
    case 'size-limit':
      return [content.place];
    case 'usual-length':
      return [];
  }
}
