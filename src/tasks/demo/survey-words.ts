/** The small tables of the demo: protocol, surveys, strata, species, targets and size limits. */

import type {
  ProtocolRow,
  SizeLimitRow,
  SpeciesRow,
  StationRow,
  StratumRow,
  SurveyRow,
  TargetRow,
} from '../../survey/table-rows.ts';
import { type SurveyYear, surveyYears } from './animal.ts';
import { animals } from './animals.ts';
import { patches } from './islands.ts';

/** Animals of one species measured on one belt before the diver only counts. */
export const measureFirst = 30;

export const protocol = {
  name: 'belts in series',
  layout: 'series',
  transectsPerStation: 6,
  lengthM: 40,
  widthM: 2,
  gapM: 10,
  measureFirst,
  lengthUnit: 'mm',
} as const satisfies ProtocolRow;

const purposes: Readonly<Record<SurveyYear, string>> = {
  2022: 'invented for the demo: first count of all four habitats, before the eastern part is closed',
  2024: 'invented for the demo: does the closed zone hold more black teatfish, and is the sandfish still there',
  2026: 'invented for the demo: may sandfish be fished next year, and does the zone stay closed',
};

export function surveyName(year: SurveyYear): string {
  return `Lorrin ${year}`;
}

/** The surveys, with first and last day as their stations were worked. */
export function surveyRows(stations: readonly StationRow[]): SurveyRow[] {
  return surveyYears.map((year) => {
    const name = surveyName(year);
    const days = stations.filter((station) => station.survey === name).map((station) => station.date);
    days.sort();
    const starts = days[0] ?? null;
    const ends = days[days.length - 1] ?? null;
    return { name, protocol: protocol.name, starts, ends, purpose: purposes[year] };
  });
}

export function stratumRows(): StratumRow[] {
  return patches.map(({ name, habitat, areaHa, depthMinM, depthMaxM }) => ({
    name,
    habitat,
    areaHa,
    depthMinM,
    depthMaxM,
  }));
}

export function speciesRows(): SpeciesRow[] {
  return animals.map((animal) => {
    const homes = patches.filter((patch) => animal.perHa[patch.name] !== undefined);
    return {
      name: animal.name,
      group: animal.group,
      code: animal.code,
      commonName: animal.commonName,
      localName: null,
      aliases: [...animal.aliases],
      minLengthMm: animal.lengthMm.least,
      maxLengthMm: animal.lengthMm.most,
      depthMinM: Math.min(...homes.map((patch) => patch.depthMinM)),
      depthMaxM: Math.max(...homes.map((patch) => patch.depthMaxM)),
      habitats: [...animal.habitats],
    };
  });
}

/** Every species is looked for in every survey, so that one that vanished shows as zero. */
export function targetRows(): TargetRow[] {
  return surveyYears.flatMap((year) =>
    animals.map((animal) => ({ survey: surveyName(year), species: animal.name })),
  );
}

export function limitRows(): SizeLimitRow[] {
  return animals.flatMap(({ name, sizeLimitMm }) =>
    sizeLimitMm === null ? [] : [{ species: name, minimumMm: sizeLimitMm, source: 'invented for the demo' }],
  );
}
