/** What the demo has to say about one species, and the years in which it was counted. */

import type { LengthMeasure } from '../../survey/words.ts';
import type { PatchName } from './islands.ts';

export const surveyYears = [2022, 2024, 2026] as const;
export type SurveyYear = (typeof surveyYears)[number];

/** Animals per hectare in 2022, 2024 and 2026. */
export type ByYear = readonly [number, number, number];

export interface Abundance {
  readonly open: ByYear;
  readonly closed: ByYear;
}

export interface Animal {
  readonly name: string;
  readonly commonName: string;
  readonly group: 'sea cucumber' | 'top shell' | 'giant clam';
  /** What the recorder types in the evening. */
  readonly code: string;
  readonly aliases: readonly string[];
  readonly habitats: readonly string[];
  /** Patches it lives in; nowhere else. */
  readonly perHa: Readonly<Partial<Record<PatchName, Abundance>>>;
  /** Clumping between stations: variance of a station's rate over its squared mean is 1 / k. */
  readonly clumpingK: number;
  readonly measure: LengthMeasure;
  readonly lengthMm: {
    readonly mean: number;
    readonly sd: number;
    readonly least: number;
    readonly most: number;
  };
  /** Invented minimum size; null where the demo sets none. */
  readonly sizeLimitMm: number | null;
}

/** Mean animals per hectare of one species in one patch, zone and year. */
export function densityPerHa(
  animal: Animal,
  where: { readonly patch: PatchName; readonly zone: 'closed' | 'open'; readonly year: SurveyYear },
): number {
  return animal.perHa[where.patch]?.[where.zone][surveyYears.indexOf(where.year)] ?? 0;
}
