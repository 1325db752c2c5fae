/** Invented pieces of work of a known size: one import of a survey, one saved sheet of a station. */

import type { Change } from '../../src/survey/store.ts';
import type { Species, Stratum, Survey } from '../../src/survey/words.ts';
import { record } from '../store-records.ts';

export const stationsOfImport = 40;
export const beltsOfStation = 6;
const speciesNames = ['Species A', 'Species B', 'Species C'];
/** Every belt has a count of every species. */
export const talliesOfStation = beltsOfStation * speciesNames.length;

/** The tables of survey `import N`, by file name. */
export function importTables(n: number): Readonly<Record<string, string>> {
  const survey = `import ${n}`;
  const stations = Array.from({ length: stationsOfImport }, (_, s) => `S${s + 1}`);
  const belts = stations.flatMap((station) =>
    Array.from({ length: beltsOfStation }, (_, b) => `${survey},${station},${b + 1}`),
  );
  const counts = belts.flatMap((belt) => speciesNames.map((name, i) => `${belt},${name},${(n + i) % 9}`));
  return {
    'strata.csv': 'stratum,area_ha\nreef,100\n',
    'surveys.csv': `survey\n${survey}\n`,
    'species.csv': `species\n${speciesNames.join('\n')}\n`,
    'stations.csv': `survey,station,stratum,date\n${stations.map((s) => `${survey},${s},reef,2026-09-01`).join('\n')}\n`,
    'transects.csv': `survey,station,transect,length_m,width_m,status\n${belts.map((belt) => `${belt},40,2,done`).join('\n')}\n`,
    'counts.csv': `survey,station,transect,species,count\n${counts.join('\n')}\n`,
  };
}

export interface Frame {
  readonly survey: Survey;
  readonly stratum: Stratum;
  readonly species: readonly Species[];
}

/** What served sheets need: one survey, one stratum, so many species, and how they come into the book. */
export function frameOf(
  newId: () => string,
  howMany: number,
): Frame & { readonly changes: readonly Change[] } {
  const survey = record('survey', { id: newId(), name: 'saves' });
  const stratum = record('stratum', { id: newId(), name: 'reef', areaHa: 100 });
  const names = Array.from({ length: howMany }, (_, i) => `Species ${i + 1}`);
  const species = names.map((name) => record('species', { id: newId(), name }));
  const changes: readonly Change[] = [
    { kind: 'survey', recordId: survey.id, after: survey },
    { kind: 'stratum', recordId: stratum.id, after: stratum },
    ...species.map((after) => ({ kind: 'species', recordId: after.id, after }) as const),
  ];
  return { survey, stratum, species, changes };
}

/** What the sheets of every save need. */
export function frameChanges(newId: () => string): readonly Change[] {
  const survey = record('survey', { id: newId(), name: 'saves' });
  const stratum = record('stratum', { id: newId(), name: 'reef', areaHa: 100 });
  const species = speciesNames.map((name) => record('species', { id: newId(), name }));
  return [
    { kind: 'survey', recordId: survey.id, after: survey },
    { kind: 'stratum', recordId: stratum.id, after: stratum },
    ...species.map((after) => ({ kind: 'species', recordId: after.id, after }) as const),
  ];
}

/** One station with its belts and counts: what is saved when a sheet is typed in. */
export function sheetOf(n: number, { survey, stratum, species }: Frame, newId: () => string): Change[] {
  const ids = { surveyId: survey.id, stratumId: stratum.id };
  const station = record('station', { id: newId(), ...ids, code: `save ${n}` });
  const changes: Change[] = [{ kind: 'station', recordId: station.id, after: station }];
  for (let b = 1; b <= beltsOfStation; b++) {
    const belt = record('transect', { id: newId(), stationId: station.id, code: String(b) });
    changes.push({ kind: 'transect', recordId: belt.id, after: belt });
    for (const one of species) {
      const given = { transectId: belt.id, speciesId: one.id, count: n % 9 };
      const tally = record('tally', { id: newId(), ...given });
      changes.push({ kind: 'tally', recordId: tally.id, after: tally });
    }
  }
  return changes;
}
