/** What a plan promises: the CV of each species and the change it could tell, from the spread an earlier survey showed. */

import { sampleVariance } from '../../maths/variance.ts';
import { detectableOnLog } from '../../planning/size/detectable-change.ts';
import { pilotFactor } from '../../planning/size/pilot-factor.ts';
import type { ExpectedPrecision, SpeciesPrecision } from '../../report/plan-page/plan-page-input.ts';
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
  if (name === null) return unknown(null, 'the book holds no earlier survey');
  let pilot: Pilot;
  try {
    pilot = await readPilot(store, { survey: name, species: [] });
  } catch (error) {
    if (error instanceof Failure && pilotName === null) return unknown(name, 'it cannot be read');
    throw error;
  }
  const missing = content.strata.filter((one) => !pilot.strata.some((known) => known.name === one.name));
  if (missing.length > 0) {
    return unknown(name, `it shows no spread in ${missing.map((one) => one.name).join(', ')}`);
  }
  const species = pilot.seen.flatMap((one) => precisionOf(one, content) ?? []);
  if (species.length === 0) return unknown(name, 'it shows no spread of any species');
  return { pilot: name, reason: null, species, unseen: pilot.unseen.map((one) => labelOf(one.species)) };
}

function unknown(pilot: string | null, reason: string): ExpectedPrecision {
  return { pilot, reason, species: [], unseen: [] };
}

/** Neyman's variance of the area-weighted mean with the stations of the plan; null where a stratum has none of them. */
function precisionOf(one: PilotSpecies, content: PlanContent): SpeciesPrecision | null {
  const parts = content.strata.map(({ name, areaHa }) => {
    const seen = one.strata.find((stratum) => stratum.name === name);
    const stations = content.stations.filter(
      (station) =>
        station.stratum === name && station.role === 'planned' && station.selection !== 'hand-picked',
    ).length;
    return { areaHa, stations, values: seen?.valuesPerHa ?? [] };
  });
  const whole = parts.reduce((sum, part) => sum + part.areaHa, 0);
  const densityPerHa = parts.reduce(
    (sum, { areaHa, values }) => sum + ((areaHa / whole) * values.reduce((a, b) => a + b, 0)) / values.length,
    0,
  );
  const variance = parts.reduce(
    (sum, { areaHa, stations, values }) =>
      sum + ((areaHa / whole) ** 2 * (sampleVariance(values) ?? 0)) / stations,
    0,
  );
  const stations = parts.reduce((sum, part) => sum + part.stations, 0);
  if (!(densityPerHa > 0) || !Number.isFinite(variance)) return null;
  const cv = Math.sqrt(variance) / densityPerHa;
  const cvAssured = cv * (pilotFactor({ stations: one.spread.degreesOfFreedom + 1 }).value ?? 1);
  const change = detectableOnLog({
    error: Math.hypot(one.spread.cv, cv),
    degreesOfFreedom: one.spread.degreesOfFreedom + Math.max(1, stations - parts.length),
    ...{ significance: 0.05, power: 0.8 },
  });
  return {
    ...{ species: labelOf(one.species), pilotStations: one.spread.stations, densityPerHa },
    ...{ cv, cvAssured, fall: change.fall, rise: change.rise },
  };
}
