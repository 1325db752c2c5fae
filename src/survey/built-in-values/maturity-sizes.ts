/**
 * Lengths at first maturity. Soft bodies stretch: take ten to twenty per cent for granted.
 * Left out: prickly redfish by weight (1 200 g), trochus and giant clam (wide ranges from memory).
 */

import type { BuiltInValue } from './built-in-value.ts';

const conand = 'Conand 1981, 1982, 1989 and 1993, New Caledonia';

export const maturitySizes: readonly BuiltInValue[] = [
  {
    species: ['Holothuria atra'],
    status: 'read',
    source: 'Seeto 1994, thesis, University of Otago',
    note: 'about 80 g gutted; New Caledonia is remembered as 165 mm',
    content: {
      what: 'size-at-maturity',
      lengthMm: 190,
      lengthMeasure: null,
      place: 'Laucala Bay, Fiji',
    },
  },
  fromMemory('Holothuria scabra', 160),
  fromMemory('Holothuria lessoni', 220),
  fromMemory('Holothuria fuscogilva', 320),
  fromMemory('Holothuria whitmaei', 260),
  fromMemory('Thelenota ananas', 300),
  fromMemory('Actinopyga echinites', 120),
  fromMemory('Actinopyga mauritiana', 220, 'the lower end of 220 to 230'),
  fromMemory('Stichopus herrmanni', 220),
  fromMemory('Holothuria atra', 165, 'low confidence; Fiji gives 190'),
];

function fromMemory(species: string, lengthMm: number, note?: string): BuiltInValue {
  return {
    species: [species],
    status: 'memory',
    source: conand,
    ...(note === undefined ? {} : { note }),
    content: { what: 'size-at-maturity', lengthMm, lengthMeasure: null, place: 'New Caledonia' },
  };
}
