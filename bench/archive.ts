/**
 * An invented archive as import tables on disk: 5 000 stations in 20 surveys, 30 000 belts, 30 species, about a
 * million animals, each measured. Seeded; every number in it is made up.
 */

import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { negativeBinomialSampler } from '../src/maths/negative-binomial-sampler.ts';
import { seededRandom } from '../src/maths/random.ts';

export interface ArchiveSize {
  readonly surveys: number;
  readonly stationsPerSurvey: number;
  readonly species: number;
  readonly animals: number;
}

export const fullArchive: ArchiveSize = {
  surveys: 20,
  stationsPerSurvey: 250,
  species: 30,
  animals: 1_000_000,
};

const strata = ['fore reef', 'lagoon', 'reef flat', 'pass', 'outer slope'];
const beltsPerStation = 6;
const clumpingK = 0.35;

interface Lines {
  readonly stations: string[];
  readonly transects: string[];
  readonly counts: string[];
  readonly lengths: string[];
}

type Random = ReturnType<typeof seededRandom>;
/** Draws the animals of one species on all belts of a station. */
type Sampler = ReturnType<typeof negativeBinomialSampler>;

/** Writes the CSV files and tells how many length rows there are. */
export function writeArchive(folder: string, size: ArchiveSize, seed = 1): { readonly animals: number } {
  mkdirSync(folder, { recursive: true });
  const random = seededRandom(seed);
  const lines: Lines = {
    stations: ['survey,station,site,stratum,zone,date,selection'],
    transects: ['survey,station,transect,length_m,width_m,status,none_seen'],
    counts: ['survey,station,transect,species,count'],
    lengths: ['survey,station,transect,species,length_mm'],
  };
  const belts = size.surveys * size.stationsPerSurvey * beltsPerStation;
  const samplers = speciesMeans(size, size.animals / belts).map((mean) =>
    negativeBinomialSampler({ mean: mean * beltsPerStation, clumpingK }),
  );
  for (let year = 2001; year < 2001 + size.surveys; year++) {
    for (let i = 0; i < size.stationsPerSurvey; i++) addStation(lines, year, i, samplers, random);
  }
  const strataLines = ['stratum,area_ha', ...strata.map((name, i) => `${name},${100 * (i + 1)}`)];
  for (const [table, body] of Object.entries({ strata: strataLines, ...lines })) {
    writeFileSync(join(folder, `${table}.csv`), `${body.join('\n')}\n`);
  }
  return { animals: lines.lengths.length - 1 };
}

function addStation(
  lines: Lines,
  year: number,
  i: number,
  samplers: readonly Sampler[],
  random: Random,
): void {
  const station = `Survey ${year},T${String(i + 1).padStart(3, '0')}`;
  const zone = i % 3 === 0 ? 'closed' : 'open';
  lines.stations.push(`${station},Site ${i % 25},${strata[i % strata.length]},${zone},${year}-06-12,random`);
  seenOnBelts(samplers, random).forEach((seen, t) => {
    lines.transects.push(`${station},${t + 1},40,2,done,${seen.size === 0 ? 'yes' : ''}`);
    for (const [species, count] of seen) {
      const tally = `${station},${t + 1},${speciesName(species)}`;
      lines.counts.push(`${tally},${count}`);
      for (let n = 0; n < count; n++) lines.lengths.push(`${tally},${100 + random.below(200)}`);
    }
  });
}

/** For each belt of a station, how many of which species: clumped at the station, scattered over its belts. */
function seenOnBelts(samplers: readonly Sampler[], random: Random): readonly ReadonlyMap<number, number>[] {
  const seen = Array.from({ length: beltsPerStation }, () => new Map<number, number>());
  samplers.forEach((sample, species) => {
    for (let animal = sample(random); animal > 0; animal--) {
      const belt = seen[random.below(beltsPerStation)]!;
      belt.set(species, (belt.get(species) ?? 0) + 1);
    }
  });
  return seen;
}

/** Few common species and many rare ones: each half as common again as the next, to the wanted sum per belt. */
function speciesMeans(size: ArchiveSize, animalsPerBelt: number): readonly number[] {
  const relative = Array.from({ length: size.species }, (_, i) => 0.8 ** i);
  const total = relative.reduce((sum, one) => sum + one, 0);
  return relative.map((one) => (one / total) * animalsPerBelt);
}

function speciesName(index: number): string {
  return `Species ${String.fromCharCode(65 + (index % 26))}${Math.floor(index / 26)}`;
}
