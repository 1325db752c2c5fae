import { describe, expect, it } from 'vitest';
import { identityFrom, record } from '../../../test/store-records.ts';
import { speciesIndex } from '../../tasks/sheets/species-ranking.ts';
import { readBelt, type TypedBelt } from '../../tasks/sheets/typed-sheet.ts';
import { sheetsEn } from '../words/sheets.en.ts';
import { beltNotes, type NoteFrame } from './belt-notes.ts';

const newId = identityFrom(81);
const sandfish = record('species', {
  id: newId(),
  name: 'Holothuria scabra',
  code: 'HSC',
  localName: 'sandfish',
  commonName: null,
  aliases: [],
});
const tools = { index: speciesIndex([sandfish], new Set()), unit: 'mm' as const };
const usual: TypedBelt = {
  id: newId(),
  code: '3',
  swim: 1,
  status: 'done',
  lengthM: '40',
  widthM: 2,
  reason: '',
  noneSeen: false,
  note: '',
  lines: [],
  list: '',
};

function notesOn(list: string, more: Partial<NoteFrame> = {}): readonly string[] {
  const belt = { ...usual, list };
  const frame = { nameOf: () => 'sandfish', measureFirst: null, activeCell: '', left: true, words: sheetsEn };
  return beltNotes(belt, readBelt(belt, tools), { ...frame, ...more });
}

describe('the margin of a belt', () => {
  it('asks about what cannot be read and about a blank, once each', () => {
    expect(notesOn('starfish 80 starfish 90')).toEqual(['"starfish" is no species of this book.']);
    expect(notesOn('182 sandfish')).toEqual(['sandfish: how many?', '182: of which species?']);
    expect(notesOn('')).toEqual(['Belt 3 is blank. None seen, lost, or still to be typed?']);
  });

  it('is silent about a word that is still being typed', () => {
    expect(notesOn('starf', { activeCell: `${usual.id}/list` })).toEqual([]);
    expect(notesOn('', { left: false })).toEqual([]);
  });

  it('says when the protocol measures no more, and when more were measured than it asks for', () => {
    expect(notesOn('sandfish 182 190', { measureFirst: 2 })).toEqual(['sandfish: measured 2, now count']);
    expect(notesOn('sandfish 182 190 +3', { measureFirst: 2 })).toEqual([]);
    expect(notesOn('sandfish 182 190 195', { measureFirst: 2 })).toEqual([
      'sandfish: 3 measured, the protocol asks for 2: is one of them a count?',
    ]);
  });
});
