import { describe, expect, test } from 'vitest';
import { speciesNamed } from '../../test/survey-builder.ts';
import { builtInValues } from './built-in-values/built-in-values.ts';
import { taxa } from './built-in-values/taxa.ts';
import { scientificNameOf } from './species-match.ts';
import { nameOfValue, type ValueContent, valueContentSchema } from './value-words.ts';
import { everyValueOf, valuesFor } from './values-lookup.ts';
import type { OwnValue, Species } from './words.ts';

function own(species: Species, content: ValueContent): OwnValue {
  return { id: 'v', speciesId: species.id, what: nameOfValue(content), source: 'own trial', content };
}

const ratio = (species: string, basis: 'weight' | 'length') =>
  valuesFor(speciesNamed(species), 'conversion', [])
    .filter(({ content }) => content.basis === basis)
    .map(({ content }) => content.ratio);

describe('the built-in values', () => {
  test('are all well formed, with a source, for species of the list', () => {
    const names = new Set(taxa.map((taxon) => taxon.name));
    for (const value of builtInValues) {
      expect(valueContentSchema.safeParse(value.content).success).toBe(true);
      expect(value.source).not.toBe('');
      for (const name of value.species) expect(names).toContain(name);
    }
  });

  // Authority: Ram et al. (Fiji, abstract read) and Lavitra et al. 2008 (Madagascar, read).
  test('hold the shares that are left after drying', () => {
    expect(ratio('Holothuria whitmaei', 'length')).toEqual([0.549]);
    expect(ratio('Holothuria whitmaei', 'weight')).toEqual([0.11]);
    expect(ratio('Bohadschia argus', 'weight')).toEqual([0.03]);
    expect(ratio('Holothuria scabra', 'weight')).toEqual([0.09]);
    expect(ratio('Holothuria scabra', 'length')).toEqual([0.326, 0.48]);
    // By hand: a tonne of dried sandfish was 1 / 0.09 = 11.1 tonnes of live ones.
    expect(1 / ratio('Holothuria scabra', 'weight')[0]!).toBeCloseTo(11.1, 1);
  });

  // Authority: FAO catalogue 2012 (read): leopardfish 36 cm and 1 800 g in Papua New Guinea.
  test('hold mean weights with the length and the place they belong to', () => {
    const means = valuesFor(speciesNamed('Bohadschia argus'), 'mean-weight', []).map(
      ({ content }) => content,
    );
    expect(means).toContainEqual(
      expect.objectContaining({ weightG: 1800, meanLengthMm: 360, place: 'Papua New Guinea' }),
    );
  });

  // Authority: the list of doubtful values: no complete pair was read.
  test('hold no length-weight pair', () => {
    expect(builtInValues.filter(({ content }) => content.what === 'length-weight')).toEqual([]);
  });

  // Authority: FAO list of species for fishery statistics (read June 2026).
  test('know the codes of the FAO list', () => {
    const codes = new Map(taxa.map((taxon) => [taxon.name, taxon.faoCode]));
    expect(codes.get('Holothuria scabra')).toBe('HFC');
    expect(codes.get('Holothuria whitmaei')).toBe('JDG');
    expect(codes.get('Rochia nilotica')).toBe('RQN');
    expect(codes.get('Thelenota ananas')).toBe('TFQ');
  });

  test('say of everything remembered that nobody has checked it', () => {
    const remembered = valuesFor(speciesNamed('Holothuria atra'), 'reference-density', []);
    expect(remembered.length).toBeGreaterThan(0);
    for (const { status, standing } of remembered) {
      expect([status, standing.code]).toEqual(['memory', 'value-memory']);
    }
  });

  // Authority: the brief of Pakoa et al. 2014 as remembered: white teatfish from deep dives, surf redfish from the reef front.
  test('keep deep dives and reef-front searches apart from belts', () => {
    const methods = (name: string) =>
      valuesFor(speciesNamed(name), 'reference-density', []).map(({ content }) => content.method);
    expect(methods('Holothuria fuscogilva')).toEqual(['deep dive']);
    expect(methods('Actinopyga mauritiana')).toEqual(['reef-front search']);
  });
});

describe('a species of the book', () => {
  const find = (name: string, more: Partial<Species> = {}) =>
    scientificNameOf({ ...speciesNamed(name), ...more });

  test('is found by its scientific name, a synonym, a subgenus, or in brackets', () => {
    expect(find('holothuria  SCABRA')).toBe('Holothuria scabra');
    expect(find('Trochus niloticus')).toBe('Rochia nilotica');
    expect(find('Holothuria (Metriatyla) scabra')).toBe('Holothuria scabra');
    expect(find('sandfish (Holothuria scabra)')).toBe('Holothuria scabra');
    expect(find('species 7', { aliases: ['Bohadschia graeffei'] })).toBe('Pearsonothuria graeffei');
  });

  test('is found by its common name only where one species bears it', () => {
    expect(find('species 7', { commonName: 'Sandfish' })).toBe('Holothuria scabra');
    expect(find('black teatfish')).toBeNull();
    expect(find('Holothuria nobilis', { commonName: 'black teatfish' })).toBe('Holothuria nobilis');
    expect(find('unknown A')).toBeNull();
  });
});

describe('an own value', () => {
  const species = speciesNamed('Holothuria scabra');
  const gutted: ValueContent = {
    what: 'conversion',
    basis: 'weight',
    from: 'live',
    to: 'gutted',
    ratio: 0.55,
    ratioLow: null,
    ratioHigh: null,
  };

  test('stands before the built-in ones for the same thing and leaves the others', () => {
    const dried: ValueContent = { ...gutted, to: 'dried', ratio: 0.08 };
    const weights = valuesFor(species, 'conversion', [own(species, dried)]).filter(
      ({ content }) => content.basis === 'weight',
    );
    expect(weights.map((value) => [value.content.ratio, value.own])).toEqual([[0.08, true]]);
    const both = valuesFor(species, 'conversion', [own(species, gutted)]);
    expect(both.filter(({ content }) => content.basis === 'weight')).toHaveLength(2);
  });

  test('is listed beside what it replaces, which is marked', () => {
    const dried: ValueContent = { ...gutted, to: 'dried', ratio: 0.08 };
    const replaced = everyValueOf(species, [own(species, dried)]).filter((value) => value.replaced);
    expect(replaced.map(({ content }) => content.what)).toEqual(['conversion']);
  });

  test('of another species says nothing here', () => {
    const other = own(speciesNamed('Holothuria atra'), gutted);
    expect(valuesFor(species, 'conversion', [other]).every((value) => !value.own)).toBe(true);
  });

  // Two values of one source have different names: the book keeps both.
  test('is named by what it is about', () => {
    expect(nameOfValue(gutted)).toBe('conversion, weight, live to gutted');
    expect(nameOfValue({ ...gutted, to: 'dried' })).toBe('conversion, weight, live to dried');
  });
});
