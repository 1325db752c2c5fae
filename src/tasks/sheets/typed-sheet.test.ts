import { describe, expect, it } from 'vitest';
import { identityFrom, record } from '../../../test/store-records.ts';
import { compareSheets } from './compare-sheets.ts';
import { type Choice, cellGroup, mergeSheets } from './merge-sheets.ts';
import { sheetQuestions } from './sheet-questions.ts';
import type { Sheet } from './sheet-schemas.ts';
import { speciesIndex } from './species-ranking.ts';
import type { SurveyWords } from './survey-schemas.ts';
import {
  cannotBeRead,
  isBlank,
  readBelt,
  sheetOfTyped,
  type TypedBelt,
  typedOfSheet,
} from './typed-sheet.ts';

const newId = identityFrom(61);
const scabra = record('species', {
  id: newId(),
  name: 'Holothuria scabra',
  code: 'HSC',
  localName: 'sandfish',
  commonName: null,
  aliases: [],
  minLengthMm: 40,
  maxLengthMm: 350,
});
const atra = { ...scabra, id: newId(), name: 'Holothuria atra', code: 'HAT', localName: 'lolly' };
const tools = { index: speciesIndex([scabra, atra], new Set()), unit: 'mm' as const };
const survey = record('survey', { id: newId(), starts: null, ends: null, protocolId: null });
const stratum = record('stratum', { id: newId() });
const station = record('station', { id: newId(), surveyId: survey.id, stratumId: stratum.id, code: 'S1' });

function belt(more: Partial<TypedBelt> = {}): TypedBelt {
  const usual = {
    id: newId(),
    code: '1',
    swim: 1,
    status: 'done',
    lengthM: '40',
    widthM: 2,
    reason: '',
  } as const;
  return { ...usual, noneSeen: false, note: '', lines: [], list: '', ...more };
}

function line(species: string, lengths: string, more = '') {
  return { id: newId(), species, lengths, more };
}

describe('a typed belt', () => {
  it('counts measured and counted-only animals of a species once, wherever they were written', () => {
    const typed = belt({ lines: [line('hsc', '182 190', '12')], list: 'sandfish 240 +3 lolly 150' });
    const sheet = sheetOfTyped({ station, belts: [typed] }, null, { tools, newId });
    // By hand: 3 measured + 12 + 3 counted = 18 sandfish; 1 lollyfish.
    expect(sheet.tallies.map(({ speciesId, count }) => [speciesId, count])).toEqual([
      [scabra.id, 18],
      [atra.id, 1],
    ]);
  });

  it('left blank is a question and never a zero; "none" says none seen', () => {
    const blank = belt();
    expect(isBlank(blank, readBelt(blank, tools))).toBe(true);
    const none = belt({ lines: [line('none', '')] });
    expect(isBlank(none, readBelt(none, tools))).toBe(false);
    expect(sheetOfTyped({ station, belts: [none] }, null, { tools, newId }).transects[0]!.noneSeen).toBe(
      true,
    );
    const lost = belt({ status: 'lost' });
    expect(isBlank(lost, readBelt(lost, tools))).toBe(false);
  });

  it('says when something on it cannot be read', () => {
    for (const typed of [
      belt({ list: 'starfish 80' }),
      belt({ lines: [line('hsc', '18o')] }),
      belt({ list: '80' }),
      belt({ list: 'hsc' }),
    ]) {
      expect(cannotBeRead(readBelt(typed, tools))).toBe(true);
    }
  });

  // Invariance: opening a sheet of the book and saving it untouched changes nothing.
  it('that comes from the book goes back as it was', () => {
    const typed = belt({ lines: [line('hsc', '182 190x3', '12'), line('hat', '', '0')] });
    const sheet = sheetOfTyped({ station, belts: [typed] }, null, { tools, newId });
    const names = (id: string) => (id === scabra.id ? 'HSC' : 'lolly');
    expect(sheetOfTyped(typedOfSheet(sheet, 'mm', names), sheet, { tools, newId })).toEqual(sheet);
  });
});

describe('questions asked while typing', () => {
  const words = {
    survey,
    protocol: null,
    strata: [stratum],
    species: [scabra, atra],
    targets: [scabra.id],
    targetsMadeFrom: 'declared',
  } as unknown as SurveyWords;
  const codes = (typed: TypedBelt) =>
    sheetQuestions(sheetOfTyped({ station, belts: [typed] }, null, { tools, newId }), words, null).map(
      ({ code, suggestion }) => ({ code, suggestion }),
    );

  it('ask whether 18 was meant in centimetres', () => {
    expect(codes(belt({ list: 'hsc 18 190' }))).toEqual([{ code: 'length-unit-slip', suggestion: '180 mm' }]);
  });

  it('ask about animals on a belt marked none seen', () => {
    expect(codes(belt({ noneSeen: true, list: 'hsc 190' })).map((one) => one.code)).toContain(
      'none-seen-but-counted',
    );
  });

  it('ask nothing of a plain sheet', () => {
    expect(codes(belt({ list: 'hsc 190 200' }))).toEqual([]);
  });
});

describe('two sheets of one station', () => {
  const first = belt({ list: 'hsc 190' });
  const theirs = sheetOfTyped({ station, belts: [first] }, null, { tools, newId });
  const own = { ...first, id: newId(), list: 'hsc 190 200 lolly 150' };
  const yours = sheetOfTyped({ station, belts: [own] }, null, { tools, newId });
  const merged = (choice: Choice): Sheet => {
    const groups = compareSheets(theirs, yours).map(cellGroup);
    return mergeSheets({ theirs, yours }, new Map(groups.map((group) => [group, choice])), () => 'yours: 2');
  };

  it('chosen from one side say what that side said, with the identities of the book', () => {
    expect(compareSheets(merged('theirs'), theirs)).toEqual([]);
    expect(compareSheets(merged('yours'), yours)).toEqual([]);
    expect(merged('yours').transects[0]!.id).toBe(first.id);
    expect(merged('yours').tallies[0]!.id).toBe(theirs.tallies[0]!.id);
  });

  it('kept both ways have theirs in the cells and yours in the note', () => {
    expect(merged('note').tallies).toEqual(theirs.tallies);
    expect(merged('note').transects[0]!.note).toContain('yours: 2');
  });
});
