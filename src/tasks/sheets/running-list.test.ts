import { describe, expect, it } from 'vitest';
import { record } from '../../../test/store-records.ts';
import { readLengthStream, writeLengthStream } from './length-stream.ts';
import { readRunningList } from './running-list.ts';
import { rankSpecies, speciesIndex, speciesMeant } from './species-ranking.ts';

const id = (n: number) => `00000009-0000-7000-8000-00000000000${n}`;
const named = (n: number, name: string, code: string, localName: string | null, commonName: string | null) =>
  record('species', { id: id(n), name, code, localName, commonName, aliases: [] });
const scabra = named(1, 'Holothuria scabra', 'HSC', 'sandfish', null);
const atra = named(2, 'Holothuria atra', 'HAT', 'lolly', 'lollyfish');
const black = named(3, 'Holothuria whitmaei', 'BTF', null, 'black teatfish');
const white = named(4, 'Holothuria fuscogilva', 'WTF', null, 'white teatfish');
const index = speciesIndex([scabra, atra, black, white], new Set([atra.id]));

function groups(text: string, unit: 'mm' | 'cm' = 'mm') {
  return readRunningList(text, index, unit).groups.map(({ speciesId, lengths, more }) => ({
    species: [scabra, atra, black, white].find((one) => one.id === speciesId)?.code ?? null,
    lengthsMm: lengths.flatMap(({ lengthMm, n }) => Array<number>(n).fill(lengthMm)),
    more,
  }));
}

// Authority of every expected value here: read off the written list by hand.
describe('a running list', () => {
  it('gives each length to the species written last, and each species one group', () => {
    expect(groups('sandfish 182 190 lolly 150 sandfish 240 +3')).toEqual([
      { species: 'HSC', lengthsMm: [182, 190, 240], more: 3 },
      { species: 'HAT', lengthsMm: [150], more: null },
    ]);
  });

  it('reads one animal at a time as divers write it: species, length, species, length', () => {
    expect(groups('hsc 182, hat 150, hsc 190')).toEqual([
      { species: 'HSC', lengthsMm: [182, 190], more: null },
      { species: 'HAT', lengthsMm: [150], more: null },
    ]);
  });

  it('knows names of several words, and two names in a row', () => {
    expect(groups('black teatfish 301 white teatfish lolly +12')).toEqual([
      { species: 'BTF', lengthsMm: [301], more: null },
      { species: 'WTF', lengthsMm: [], more: null },
      { species: 'HAT', lengthsMm: [], more: 12 },
    ]);
  });

  it('gives back a name nobody knows with its lengths, and takes the nearest for a slip of the pencil', () => {
    const { groups: read } = readRunningList('starfish of some kind 80 sandfsh 190', index, 'mm');
    expect(read.map(({ speciesId, written, match }) => ({ speciesId, written, match }))).toEqual([
      { speciesId: null, written: 'starfish of some kind', match: null },
      { speciesId: scabra.id, written: 'sandfsh', match: 'near' },
    ]);
  });

  it('does not guess whose length it is when no species came before', () => {
    expect(readRunningList('182 sandfish 190', index, 'mm').unread).toEqual(['182']);
  });

  it('that says none says none seen, in English and French', () => {
    for (const text of ['none', ' NONE ', '0', '-', 'rien', 'néant']) {
      expect(readRunningList(text, index, 'mm')).toEqual({ groups: [], noneSeen: true, unread: [] });
    }
    expect(readRunningList('', index, 'mm').noneSeen).toBe(false);
  });
});

describe('a stream of lengths', () => {
  it('reads repeats, counts and units, and gives back what is no length', () => {
    const stream = readLengthStream('182 190x3 18cm +12 24o', 'mm');
    expect(stream).toEqual({
      lengths: [
        { lengthMm: 182, n: 1 },
        { lengthMm: 190, n: 3 },
        { lengthMm: 180, n: 1 },
      ],
      more: 12,
      writtenZero: false,
      unread: ['24o'],
    });
  });

  it('takes a comma for a decimal only in centimetres before one digit', () => {
    const mm = (text: string, unit: 'mm' | 'cm') =>
      readLengthStream(text, unit).lengths.map((one) => one.lengthMm);
    expect(mm('182,190', 'mm')).toEqual([182, 190]);
    expect(mm('18,5 19', 'cm')).toEqual([185, 190]);
    expect(mm('18,19', 'cm')).toEqual([180, 190]);
  });

  it('tells a written zero from a zero that slipped in among lengths', () => {
    expect(readLengthStream('0', 'mm')).toMatchObject({ writtenZero: true, unread: [] });
    expect(readLengthStream('182 0', 'mm')).toMatchObject({ writtenZero: false, unread: ['0'] });
  });

  // Invariance: what was written is read back the same, in either unit.
  it('survives being written and read again', () => {
    for (const unit of ['mm', 'cm'] as const) {
      const { lengths } = readLengthStream('182 190x3 7 2045', 'mm');
      expect(readLengthStream(writeLengthStream(lengths, unit), unit).lengths).toEqual(lengths);
    }
  });
});

describe('a few letters', () => {
  it('find the species by code, local name, common name, the start of words and what is near', () => {
    const first = (text: string) => rankSpecies(text, index)[0]?.species.code ?? null;
    expect(['HSC', 'sandf', 'lolly', 'hol sca', 'black', 'teat', 'sandfsh', 'xyz'].map(first)).toEqual([
      'HSC',
      'HSC',
      'HAT',
      'HSC',
      'BTF',
      'BTF',
      'HSC',
      null,
    ]);
  });

  it('that could be several species mean none, and list the target first', () => {
    expect(speciesMeant('holothuria', index)).toBeNull();
    expect(rankSpecies('holothuria', index)[0]!.species.code).toBe('HAT');
  });
});
