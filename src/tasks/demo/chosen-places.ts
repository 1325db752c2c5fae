/** Where the divers were sent: twelve fixed places for all surveys, and fresh random ones for each. */

import type { SeededRandom } from '../../maths/random.ts';
import { type SurveyYear, surveyYears } from './animal.ts';
import { isInside, type Patch, type PatchName, patches, type Spot, zoneOf } from './islands.ts';

export interface ChosenPlace {
  readonly code: string;
  readonly selection: 'fixed' | 'random';
  readonly patch: Patch;
  readonly zone: 'closed' | 'open';
  readonly site: string;
  readonly planned: Spot;
  readonly bearingDeg: number;
  /** Mean depth of the place, so that a fixed station keeps its depth. */
  readonly depthM: number;
}

/** From the first belt to the end of the last: 6 belts of 40 m and 5 gaps of 10 m. */
export const lineLengthM = 290;
const fixedPerPatch = 3;
const apartM = 300;
/** Room for the boat to anchor a little off the plan and still be in the patch. */
const marginM = 40;

const stationsOf: Readonly<Record<SurveyYear, Readonly<Record<PatchName, number>>>> = {
  2022: { 'north flat': 6, 'south flat': 6, 'lagoon seagrass': 6, 'outer terrace': 6 },
  2024: { 'north flat': 7, 'south flat': 7, 'lagoon seagrass': 6, 'outer terrace': 6 },
  2026: { 'north flat': 7, 'south flat': 7, 'lagoon seagrass': 7, 'outer terrace': 7 },
};

/** The places of each survey, fixed ones first. */
export function choosePlaces(random: SeededRandom): ReadonlyMap<SurveyYear, readonly ChosenPlace[]> {
  const fixed: ChosenPlace[] = [];
  for (const patch of patches) {
    for (let i = 0; i < fixedPerPatch; i++) {
      // One of the three lies in the closed zone, so that both zones can be followed through time.
      const zone = i === 0 ? 'closed' : 'open';
      const wanted = { code: `F${fixed.length + 1}`, selection: 'fixed', patch, zone } as const;
      fixed.push(choose(wanted, fixed, random));
    }
  }
  return new Map(surveyYears.map((year) => [year, [...fixed, ...randomPlaces(year, fixed, random)]]));
}

function randomPlaces(year: SurveyYear, fixed: readonly ChosenPlace[], random: SeededRandom): ChosenPlace[] {
  const chosen: ChosenPlace[] = [];
  for (const patch of patches) {
    for (let i = fixedPerPatch; i < stationsOf[year][patch.name]; i++) {
      const code = `R${year % 100}-${chosen.length + 1}`;
      const wanted = { code, selection: 'random', patch, zone: 'either' } as const;
      chosen.push(choose(wanted, [...fixed, ...chosen], random));
    }
  }
  return chosen;
}

interface Wanted extends Pick<ChosenPlace, 'code' | 'selection' | 'patch'> {
  readonly zone: 'closed' | 'open' | 'either';
}

/** Draws until a whole line of belts lies in the patch and in one zone, apart from the others. */
function choose(wanted: Wanted, others: readonly ChosenPlace[], random: SeededRandom): ChosenPlace {
  const { code, selection, patch } = wanted;
  for (;;) {
    const planned = { eastM: random.below(6800) - 3400, northM: random.below(5200) - 2600 };
    const bearingDeg = 10 * random.below(36);
    const zone = zoneOf(planned);
    if (wanted.zone !== 'either' && wanted.zone !== zone) continue;
    const middle = along(planned, bearingDeg, lineLengthM / 2);
    const line = [planned, middle, along(planned, bearingDeg, lineLengthM)];
    if (!line.every((spot) => isWellInside(patch, spot) && zoneOf(spot) === zone)) continue;
    if (others.some((other) => distanceM(middleOf(other), middle) < apartM)) continue;
    const depthRange = patch.depthMaxM - patch.depthMinM;
    const depthM = patch.depthMinM + depthRange * (0.2 + 0.6 * random.uniform());
    const site = patch.sites[planned.eastM < 0 ? 0 : 1];
    return { code, selection, patch, zone, site, planned, bearingDeg, depthM };
  }
}

/** The spot at a distance along a true bearing. */
export function along(spot: Spot, bearingDeg: number, distanceAlongM: number): Spot {
  const angle = (bearingDeg * Math.PI) / 180;
  return {
    eastM: spot.eastM + distanceAlongM * Math.sin(angle),
    northM: spot.northM + distanceAlongM * Math.cos(angle),
  };
}

function middleOf(place: ChosenPlace): Spot {
  return along(place.planned, place.bearingDeg, lineLengthM / 2);
}

function distanceM(a: Spot, b: Spot): number {
  return Math.sqrt((a.eastM - b.eastM) ** 2 + (a.northM - b.northM) ** 2);
}

function isWellInside(patch: Patch, { eastM, northM }: Spot): boolean {
  return [-marginM, marginM].every(
    (m) => isInside(patch, { eastM: eastM + m, northM }) && isInside(patch, { eastM, northM: northM + m }),
  );
}
