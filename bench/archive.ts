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

/** Writes the CSV files and tells how many length rows there are. */
export function writeArchive(folder: string, size: ArchiveSize, seed = 1): { readonly animals: number } {
  mkdirSync(folder, { recursive: true });
  const random = seededRandom(seed);
  const stations: string[] = ['survey,station,site,stratum,zone,date,selection'];
  const transects: string[] = ['survey,station,transect,length_m,width_m,status,none_seen'];
  const counts: string[] = ['survey,station,transect,species,count'];
  const lengths: string[] = ['survey,station,transect,species,length_mm'];
  const belts = size.surveys * size.stationsPerSurvey * beltsPerStation;
  const samplers = speciesMeans(size, size.animals / belts).map((mean) =>
    negativeBinomialSampler({ mean: mean * beltsPerStation, clumpingK }),
  );
  for (let s = 0; s < size.surveys; s++) {
    const survey = `Survey ${2001 + s}`;
    for (let i = 0; i < size.stationsPerSurvey; i++) {
      const station = `T${String(i + 1).padStart(3, '0')}`;
      const stratum = strata[i % strata.length]!;
      stations.push(
        `${survey},${station},Site ${i % 25},${stratum},${i % 3 === 0 ? 'closed' : 'open'},${2001 + s}-06-12,random`,
      );
      const seen = Array.from({ length: beltsPerStation }, () => new Map<number, number>());
      samplers.forEach((sample, species) => {
        for (let animal = sample(random); animal > 0; animal--) {
          const belt = seen[random.below(beltsPerStation)]!;
          belt.set(species, (belt.get(species) ?? 0) + 1);
        }
      });
      seen.forEach((belt, t) => {
        transects.push(`${survey},${station},${t + 1},40,2,done,${belt.size === 0 ? 'yes' : ''}`);
        for (const [species, count] of belt) {
          const start = `${survey},${station},${t + 1},${speciesName(species)}`;
          counts.push(`${start},${count}`);
          for (let n = 0; n < count; n++) lengths.push(`${start},${100 + random.below(200)}`);
        }
      });
    }
  }
  const write = (table: string, lines: readonly string[]) =>
    writeFileSync(join(folder, `${table}.csv`), `${lines.join('\n')}\n`);
  write('strata', ['stratum,area_ha', ...strata.map((name, i) => `${name},${100 * (i + 1)}`)]);
  write('stations', stations);
  write('transects', transects);
  write('counts', counts);
  write('lengths', lengths);
  return { animals: lengths.length - 1 };
}

/** Few common species and many rare ones: each half as common again as the next, to the wanted sum per belt. */
function speciesMeans(size: ArchiveSize, animalsPerBelt: number): readonly number[] {
  const relative = Array.from({ length: size.species }, (_, i) => 0.8 ** i);
  const total = relative.reduce((sum, one) => sum + one, 0);
  return relative.map((one) => (one / total) * animalsPerBelt);
}

export function speciesName(index: number): string {
  return `Species ${String.fromCharCode(65 + (index % 26))}${Math.floor(index / 26)}`;
}
