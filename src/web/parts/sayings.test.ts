import { describe, expect, it } from 'vitest';
import { identityFrom, record } from '../../../test/store-records.ts';
import { speciesIndex } from '../../tasks/sheets/species-ranking.ts';
import type { TypedBelt } from '../../tasks/sheets/typed-sheet.ts';
import { sheetsEn } from '../words/sheets.en.ts';
import { sayings } from './sayings.ts';

const newId = identityFrom(72);
const sandfish = record('species', {
  id: newId(),
  name: 'Holothuria scabra',
  code: 'HSC',
  localName: 'sandfish',
  commonName: null,
  aliases: [],
});
const tools = { index: speciesIndex([sandfish], new Set()), unit: 'mm' as const };
const station = record('station', { id: newId(), surveyId: newId(), stratumId: newId(), code: 'S1' });

function belt(code: string, more: Partial<TypedBelt>): TypedBelt {
  const usual = { id: newId(), code, swim: 1, status: 'done', lengthM: '40', widthM: 2, reason: '' } as const;
  return { ...usual, noneSeen: false, note: '', lines: [], list: '', ...more };
}

describe('a sheet read aloud', () => {
  it('says belt, species and two lengths at a time, then what was only counted, and never passes over a blank', () => {
    const belts = [
      belt('1', { list: 'sandfish 182 190x2 +12' }),
      belt('2', { noneSeen: true }),
      belt('3', {}),
      belt('4', { status: 'lost' }),
    ];
    expect(sayings({ station, belts }, tools, { nameOf: () => 'sandfish', words: sheetsEn })).toEqual([
      'Station S1',
      'Belt 1',
      'sandfish',
      '182, 190',
      '190',
      '12 more counted',
      'Belt 2, none seen',
      'Belt 3',
      'Belt 3 is blank. None seen, lost, or still to be typed?',
      'Belt 4, lost',
      'end of the sheet',
    ]);
  });
});
