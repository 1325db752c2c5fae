/** What a plan promises: the CV of each species and the change it could tell, from the spread an earlier survey showed. */

import { sampleVariance } from '../../maths/variance.ts';
import { detectableOnLog } from '../../planning/size/detectable-change.ts';
import { pilotFactor } from '../../planning/size/pilot-factor.ts';
import type {
  ExpectedPrecision,
  NoPrecision,
  SpeciesPrecision,
} from '../../report/plan-page/plan-page-input.ts';
import { Failure } from '../../survey/failure.ts';
import type { PlanContent } from '../../survey/plan-words.ts';
import type { Store } from '../../survey/store.ts';
import { labelOf, type Pilot, type PilotSpecies, readPilot } from '../pilot.ts';

/** From this survey of the book, else from the latest one with another name than the plan's own. */
export async function expectedPrecision(
  store: Store,
  content: PlanContent,
  pilotName: string | null,
): Promise<ExpectedPrecision> {
  const surveys = (await store.all('survey')).toSorted((a, b) =>
    (a.starts ?? '') < (b.starts ?? '') ? -1 : 1,
  );
  const name = pilotName ?? surveys.filter((one) => one.name !== content.survey).at(-1)?.name ?? null;
  if (name === null) return unknown(null, { code: 'noEarlier' });
  let pilot: Pilot;
  try {
    pilot = await readPilot(store, { survey: name, species: [] });
  } catch (error) {
    if (error instanceof Failure && pilotName === null) return unknown(name, { code: 'unreadable' });
    throw error;
  }
  const missing = content.strata.filter((one) => !pilot.strata.some((known) => known.name === one.name));
  if (missing.length > 0) {
    return unknown(name, { code: 'noSpreadIn', strata: missing.map((one) => one.name) });
  }
  const species = pilot.seen.flatMap((one) => precisionOf(one, content) ?? []);
  if (species.length === 0) return unknown(name, { code: 'noSpread' });
  return { pilot: name, reason: null, species, unseen: pilot.unseen.map((one) => labelOf(one.species)) };
}

function unknown(pilot: string | null, reason: NoPrecision): ExpectedPrecision {
  return { pilot, reason, species: [], unseen: [] };
}

/** Neyman's variance of the area-weighted mean with the stations of the plan; null where a stratum has none of them. */
function precisionOf(one: PilotSpecies, content: PlanContent): SpeciesPrecision | null {
  const plannedHa = searchedHaOf(content);
  const parts = content.strata.map(({ name, areaHa }) => {
    const seen = one.strata.find((stratum) => stratum.name === name);
    const stations = content.stations.filter(
      (station) =>
        station.stratum === name && station.role === 'planned' && station.selection !== 'hand-picked',
    ).length;
    const valuesPerHa = seen?.valuesPerHa ?? [];
    const mean = valuesPerHa.reduce((a, b) => a + b, 0) / valuesPerHa.length;
    const thenHa = (seen?.searchedAreaM2 ?? 0) / 10_000;
    const spread = { mean, variance: sampleVariance(valuesPerHa) ?? 0 };
    return {
      areaHa,
      stations,
      mean,
      variance: atStationSize(spread, { thenHa, nowHa: plannedHa ?? thenHa }),
    };
  });
  const whole = parts.reduce((sum, part) => sum + part.areaHa, 0);
  const densityPerHa = parts.reduce((sum, { areaHa, mean }) => sum + (areaHa / whole) * mean, 0);
  const squaredError = parts.reduce(
    (sum, { areaHa, stations, variance }) => sum + ((areaHa / whole) ** 2 * variance) / stations,
    0,
  );
  const stations = parts.reduce((sum, part) => sum + part.stations, 0);
  if (!(densityPerHa > 0) || !Number.isFinite(squaredError)) return null;
  const cv = Math.sqrt(squaredError) / densityPerHa;
  const factor = pilotFactor({ stations: one.spread.degreesOfFreedom + 1 }).value ?? 1;
  // Told with the CVs to count on, as `plan size` does: a promise is worth what the careful figure keeps.
  const change = detectableOnLog({
    error: Math.hypot(one.spread.cv, cv) * factor,
    degreesOfFreedom: one.spread.degreesOfFreedom + Math.max(1, stations - parts.length),
    ...{ significance: 0.05, power: 0.8 },
  });
  return {
    ...{ species: labelOf(one.species), pilotStations: one.spread.stations, densityPerHa },
    ...{ cv, cvAssured: cv * factor, fall: change.fall, rise: change.rise },
  };
}

/** What a station of the plan searches; null before the belts are laid with their width. */
function searchedHaOf({ laid }: PlanContent): number | null {
  if (laid === null || laid.beltWidthM === null) return null;
  return (laid.belts * laid.beltLengthM * laid.beltWidthM) / 10_000;
}

/**
 * Variance between stations of another size: the part from chance, mean / area, changes, and the part from clumping stays.
 *
 * A smaller station sees fewer animals and swings more. The same law as in the rehearsal (variance m + m^2 / k of a count).
 */
function atStationSize(
  { mean, variance }: { readonly mean: number; readonly variance: number },
  { thenHa, nowHa }: { readonly thenHa: number; readonly nowHa: number },
): number {
  const byChance = mean / thenHa;
  if (!(byChance > 0)) return variance;
  // Less spread than chance alone gives is chance, all of it.
  if (variance <= byChance) return (variance * thenHa) / nowHa;
  return variance - byChance + mean / nowHa;
}
