import { describe, expect, it } from 'vitest';
import { type BeltSketch, speciesNamed, surveyOf } from '../../test/survey-builder.ts';
import { classifyTransect, observeSpecies } from './observation.ts';

const sandfish = speciesNamed('sandfish');

function observed(...belts: BeltSketch[]) {
  const survey = surveyOf({ areasHa: { flat: 10 }, stations: [{ code: 'A', stratum: 'flat', belts }] });
  const [observation] = observeSpecies(survey, sandfish);
  const states = survey.stations[0]!.transects.map((transect) => classifyTransect(transect, sandfish));
  return { states, ...observation! };
}

// Authority: DESIGN 2, "Unknown is not zero", clause by clause.
describe('unknown is not zero', () => {
  it('counts a done belt with a tally of the species', () => {
    expect(observed({ counts: { sandfish: 3 } })).toMatchObject({
      states: ['counted'],
      state: 'observed',
      animals: 3,
    });
  });

  it('reads a belt with other animals as a zero', () => {
    expect(observed({ counts: { lollyfish: 3 } })).toMatchObject({
      states: ['zero'],
      state: 'observed',
      animals: 0,
    });
  });

  it('reads "none seen" and a written zero as zeros', () => {
    expect(observed({ noneSeen: true }, { counts: { sandfish: 0 } }).states).toEqual(['zero', 'zero']);
  });

  it('leaves a blank belt, and with it its station, unresolved', () => {
    expect(observed({ counts: { sandfish: 3 } }, {})).toMatchObject({
      states: ['counted', 'unresolved'],
      state: 'unresolved',
      animals: 0,
      searchedAreaCm2: 0,
    });
  });

  it('leaves a station without belts unresolved', () => {
    expect(observed().state).toBe('unresolved');
  });

  it('takes lost and not-done belts out of count and area', () => {
    const station = observed({ counts: { sandfish: 1 } }, { status: 'lost' }, { status: 'not done' });
    expect(station).toMatchObject({ states: ['counted', 'lost', 'lost'], state: 'observed' });
    expect(station.searchedAreaCm2).toBe(80 * 10_000);
  });

  it('counts a partial belt with the length that was searched', () => {
    expect(observed({ status: 'partial', lengthM: 25, counts: { sandfish: 2 } }).searchedAreaCm2).toBe(
      50 * 10_000,
    );
  });

  it('does not look beyond the scope of a swim, but counts what was tallied there all the same', () => {
    const station = observed(
      { scope: ['lollyfish'], noneSeen: true },
      { scope: ['lollyfish'], counts: { sandfish: 1 } },
    );
    expect(station.states).toEqual(['not looked for', 'counted']);
    expect(station.searchedAreaCm2).toBe(80 * 10_000);
  });

  it('says of a station where every belt was lost that it was lost, not that nothing was there', () => {
    expect(observed({ status: 'lost' }).state).toBe('lost');
  });

  it('keeps the second swim of a belt out', () => {
    expect(observed({ counts: { sandfish: 2 } }, { swim: 2, counts: { sandfish: 5 } }).animals).toBe(2);
  });
});
