import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { TallyRow } from '../../survey/table-rows.ts';
import { surveyYears } from './animal.ts';
import { animals } from './animals.ts';
import { demoRows } from './demo-rows.ts';
import { patches } from './islands.ts';
import { surveyName } from './survey-words.ts';

// However the tables are padded, the numbers in them count.
const page = readFileSync(join(import.meta.dirname, '../../../docs/handbook/demo.md'), 'utf8').replaceAll(
  / {2,}/g,
  ' ',
);
const rows = demoRows(1);

// Authority: the handbook and the program must say the same; a difference fails, whichever side is wrong.
describe('the handbook page of the demo', () => {
  it('gives the starting values that were used', () => {
    for (const { commonName, name, clumpingK, lengthMm, perHa } of animals) {
      const line = page.split('\n').find((text) => text.startsWith(`| ${commonName} (*${name}*) |`));
      expect(line).toContain(`| ${clumpingK} | ${lengthMm.mean} (${lengthMm.sd})`);
      const stated = new Set((line!.split('|')[3]!.match(/\d+/g) ?? []).map(Number));
      const used = Object.values(perHa).flatMap(({ open, closed }) => [...open, ...closed]);
      expect(stated).toEqual(new Set(used));
    }
  });

  it('gives the strata with their areas and depths', () => {
    for (const { name, habitat, areaHa, depthMinM, depthMaxM, mode } of patches) {
      expect(page).toContain(`| ${name} | ${habitat} | ${areaHa} | ${depthMinM}-${depthMaxM} | ${mode} |`);
    }
  });

  it('tells the story that seed 1 tells', () => {
    const [first, second, third] = surveyYears.map((year) => animalsOf('Holothuria scabra', year));
    expect(page).toContain(`${first}, ${second} and ${third} animals were counted`);
    expect(page).toContain(`${animalsOf('Stichopus herrmanni', 2022)} animals in 2022, none since`);
    const [early, middle, late] = surveyYears.map(
      (year) => rows.stations.filter((one) => one.row.survey === surveyName(year)).length,
    );
    expect(page).toContain(`${early}, ${middle} and ${late} stations`);
    for (const { row } of rows.transects.filter((one) => one.row.status === 'lost')) {
      expect(page).toContain(`${row.station} transect ${row.transect}`);
    }
  });
});

function animalsOf(species: string, year: (typeof surveyYears)[number]): number {
  const isWanted = (tally: TallyRow) =>
    tally.species === species && tally.survey === surveyName(year) && tally.swim === 1;
  return rows.tallies.reduce((total, { row }) => total + (isWanted(row) ? row.count! : 0), 0);
}
