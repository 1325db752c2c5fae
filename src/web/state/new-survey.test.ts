import { describe, expect, it } from 'vitest';
import { protocolPresets } from '../../survey/protocol-presets.ts';
import { newSurveySchema, type SurveyWords } from '../../tasks/sheets/survey-schemas.ts';
import { linesAsBefore, newSurveyOf, numbersOf, type WrittenSurvey } from './new-survey.ts';

const preset = protocolPresets[0]!;
const written: WrittenSurvey = {
  name: 'North 2027',
  starts: '2 Feb 2027',
  protocol: preset,
  numbers: numbersOf(preset),
  strata: 'reef flat, 420,5\nlagoon',
  species: 'Holothuria scabra, HSC, sandfish\nHolothuria atra',
  who: 'Officer A',
};
const today = '2026-11-25';

describe('a new survey as it is written on the screen', () => {
  it('is a request the server takes', () => {
    const { asks, request } = newSurveyOf(written, null, today);
    expect(asks).toEqual([]);
    expect(newSurveySchema.parse(request)).toMatchObject({
      survey: { name: 'North 2027', starts: '2027-02-02' },
      strata: [
        { name: 'reef flat', areaHa: 420.5 },
        { name: 'lagoon', areaHa: null },
      ],
    });
    expect(request.targets).toEqual(request.species.map(({ id }) => id));
  });

  it('names everything that cannot be read, and guesses none of it', () => {
    const slips = {
      ...written,
      name: ' ',
      starts: '3/4/2027',
      numbers: { ...written.numbers, widthM: '2 or 4', transectsPerStation: '5.5' },
      strata: 'flat, 1,200\nflat, 3',
    };
    expect(newSurveyOf(slips, null, today).asks).toEqual([
      { kind: 'name' },
      { kind: 'day', text: '3/4/2027' },
      { kind: 'number', field: 'transectsPerStation', text: '5.5' },
      { kind: 'number', field: 'widthM', text: '2 or 4' },
      { kind: 'area', line: 1, text: '1,200' },
      { kind: 'twice', line: 2, text: 'flat' },
    ]);
    expect(newSurveyOf({ ...written, strata: ' ' }, null, today).asks).toEqual([{ kind: 'stratum' }]);
  });

  it('begins as the survey before it, with the same records', () => {
    const first = newSurveyOf(written, null, today).request;
    const known = {
      survey: first.survey,
      protocol: first.protocol,
      strata: first.strata,
      species: first.species,
      targets: first.targets,
    } as unknown as SurveyWords;
    const again = { ...written, ...linesAsBefore(known), name: 'North 2028', protocol: first.protocol! };
    const { asks, request } = newSurveyOf(again, known, today);
    expect(asks).toEqual([]);
    expect(request.strata).toEqual(first.strata);
    expect(request.species).toEqual(first.species);
    expect(request.survey.protocolId).toBe(first.protocol!.id);

    const wider = newSurveyOf({ ...again, numbers: { ...again.numbers, widthM: '4' } }, known, today).request;
    expect(wider.protocol).toMatchObject({ widthM: 4 });
    expect(wider.protocol!.id).not.toBe(first.protocol!.id);

    const other = newSurveyOf({ ...again, strata: 'Reef flat, 400' }, known, today);
    expect(other.asks).toEqual([{ kind: 'other area', name: 'reef flat', areaHa: 420.5 }]);
  });
});
