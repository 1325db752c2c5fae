import { describe, expect, it } from 'vitest';
import { identityFrom, record } from '../../../test/store-records.ts';
import { speciesIndex } from '../../tasks/sheets/species-ranking.ts';
import { readBelt, type TypedBelt } from '../../tasks/sheets/typed-sheet.ts';
import { beltReader } from './belt-reader.ts';

const newId = identityFrom(82);
const sandfish = record('species', { id: newId(), name: 'Holothuria scabra', localName: 'sandfish' });
const tools = { index: speciesIndex([sandfish], new Set()), unit: 'mm' as const };
const line = (lengths: string) => ({ id: newId(), species: 'sandfish', lengths, more: '' });
const belt: TypedBelt = {
  id: newId(),
  code: '1',
  swim: 1,
  status: 'done',
  lengthM: '40',
  widthM: 2,
  reason: '',
  noneSeen: false,
  note: '',
  lines: [line('182 190'), line('201')],
  list: 'sandfish 240',
};

describe('reading belts once', () => {
  it('says the same as reading anew', () => {
    expect(beltReader(tools).belt(belt)).toEqual(readBelt(belt, tools));
  });

  it('does not read again what did not change, and reads what did', () => {
    const reader = beltReader(tools);
    const [first, second] = belt.lines;
    const before = reader.line(first!);
    expect(reader.belt(belt)).toBe(reader.belt(belt));
    const next = { ...belt, lines: [first!, { ...second!, lengths: '201 210' }] };
    expect(reader.belt(next)).toEqual(readBelt(next, tools));
    expect(reader.line(next.lines[0]!)).toBe(before);
  });
});
