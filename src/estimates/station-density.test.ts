import { expect, test } from 'vitest';
import a1 from '../../test/vectors/a1_station_density.json' with { type: 'json' };
import { near } from '../maths/nearness.ts';
import { observeSpecies } from '../survey/observation.ts';
import { joinSurvey } from '../survey/survey-in-hand.ts';
import { unknownStation } from '../survey/unknown-station.ts';
import type { Species, Station, Stratum, Survey, Tally, Transect } from '../survey/words.ts';
import { stationDensityPerHa } from './station-density.ts';

let made = 0;
const newId = () => `00000000-0000-7000-8000-${String(++made).padStart(12, '0')}`;

const surveyId = newId();
const survey: Survey = {
  id: surveyId,
  name: 'S1',
  protocolId: null,
  starts: null,
  ends: null,
  purpose: null,
};
const species: Species = {
  id: newId(),
  name: 'species A',
  group: null,
  code: null,
  commonName: null,
  localName: null,
  aliases: [],
  minLengthMm: null,
  maxLengthMm: null,
  depthMinM: null,
  depthMaxM: null,
  habitats: [],
};

function stratumOf(name: string): Stratum {
  return { id: newId(), name, habitat: null, areaHa: null, depthMinM: null, depthMaxM: null };
}

function stationOf(code: string, stratumId: string): Station {
  return {
    ...unknownStation,
    id: newId(),
    surveyId,
    code,
    stratumId,
    date: '2026-03-01',
    selection: 'random',
  };
}

/** A lost sheet has a count of null; a finished belt without the animal has a tally of 0. */
function recordsOfS1() {
  const { stations, transects } = a1.data;
  const strata = [...new Set(stations.stratum)].map(stratumOf);
  const stationRecords = stations.station.map((code, i) =>
    stationOf(code, strata.find((stratum) => stratum.name === stations.stratum[i])!.id),
  );
  const transectRecords = transects.station.map(
    (code, i): Transect => ({
      id: newId(),
      stationId: stationRecords.find((station) => station.code === code)!.id,
      code: String(transects.transect[i]),
      swim: 1,
      scope: [],
      lengthM: transects.length_m[i]!,
      widthM: transects.width_m[i]!,
      depthStartM: null,
      depthEndM: null,
      cover: [],
      status: transects.status[i] === 'ok' ? 'done' : 'lost',
      reason: null,
      noneSeen: false,
      note: null,
    }),
  );
  const counts: readonly (number | string | null)[] = transects.count;
  const tallies = transectRecords.flatMap((transect, i): Tally[] => {
    const count = counts[i];
    if (typeof count !== 'number') return [];
    return [{ id: newId(), transectId: transect.id, speciesId: species.id, count, lengths: [] }];
  });
  return { strata, rows: { stations: stationRecords, transects: transectRecords, tallies } };
}

// Authority: vector a1 (R 4.2.2, base aggregate).
test('station densities come from what was searched, lost sheets being in neither count nor area', () => {
  const { strata, rows } = recordsOfS1();
  const joined = joinSurvey({ survey, protocol: null, strata, targets: [species] }, rows);
  const observed = observeSpecies(joined, species);
  expect(observed.map((observation) => observation.station.record.code)).toEqual(a1.expected.station);
  observed.forEach((observation, i) => {
    expect(observation.state).toBe('observed');
    expect(observation.animals).toBe(a1.expected.count[i]);
    near(observation.searchedAreaCm2 / 10_000, a1.expected.area_m2[i]!, a1.tolerance_relative);
    near(stationDensityPerHa(observation), a1.expected.density_ind_ha[i]!, a1.tolerance_relative);
    const worked = observation.station.transects.filter((transect) => transect.status !== 'lost').length;
    expect(worked).toBe(a1.expected.n_transects[i]);
  });
});

test('the vector holds lost sheets, so that the test above means something', () => {
  expect(a1.data.transects.status.filter((status) => status !== 'ok').length).toBeGreaterThan(0);
});

// By hand: 3 animals on 240 m2 = 0.024 ha are 125 per hectare.
test('three animals on 240 square metres are 125 per hectare, and no area is no density', () => {
  near(stationDensityPerHa({ animals: 3, searchedAreaCm2: 2_400_000 }), 125, 1e-15);
  expect(stationDensityPerHa({ animals: 0, searchedAreaCm2: 0 })).toBeNull();
});
