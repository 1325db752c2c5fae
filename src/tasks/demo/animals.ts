/**
 * The animals of the demo: how many, how clumped, how long. Invented starting values, of the order of
 * magnitude usual in the trade (from memory; no published value stands here and none may be quoted from here).
 */

import type { Abundance, Animal, ByYear } from './animal.ts';

const flats = ['reef flat'];
const seaCucumber = { group: 'sea cucumber', measure: 'body relaxed' } as const;
const giantClam = { group: 'giant clam', measure: 'shell length' } as const;

export const animals: readonly Animal[] = [
  {
    ...seaCucumber,
    ...named('Holothuria atra', 'lollyfish', 'lolly'),
    habitats: flats,
    perHa: { 'north flat': steady(1500), 'south flat': steady(5000) },
    clumpingK: 0.6,
    ...sized(170, 40, { least: 40, most: 450, limit: null }),
  },
  {
    ...seaCucumber,
    ...named('Stichopus chloronotus', 'greenfish', 'green'),
    habitats: flats,
    perHa: { 'north flat': steady(300), 'south flat': steady(300) },
    clumpingK: 0.3,
    ...sized(180, 40, { least: 40, most: 380, limit: null }),
  },
  {
    ...seaCucumber,
    ...named('Holothuria scabra', 'sandfish', 'sand'),
    habitats: ['seagrass'],
    perHa: { 'lagoon seagrass': everywhere([180, 110, 60]) },
    clumpingK: 0.25,
    ...sized(170, 35, { least: 40, most: 350, limit: 160 }),
  },
  {
    ...seaCucumber,
    ...named('Holothuria whitmaei', 'black teatfish', 'black'),
    aliases: ['Holothuria nobilis'],
    habitats: ['reef flat', 'reef terrace'],
    perHa: { 'north flat': recovering(), 'south flat': recovering(), 'outer terrace': recovering() },
    clumpingK: 0.25,
    ...sized(280, 40, { least: 100, most: 540, limit: 260 }),
  },
  {
    ...seaCucumber,
    ...named('Holothuria fuscogilva', 'white teatfish', 'white'),
    habitats: ['reef terrace'],
    perHa: { 'outer terrace': steady(6) },
    clumpingK: 0.2,
    ...sized(350, 45, { least: 120, most: 570, limit: 320 }),
  },
  {
    ...seaCucumber,
    ...named('Thelenota ananas', 'prickly redfish', 'prickly'),
    habitats: ['reef terrace'],
    perHa: { 'outer terrace': steady(8) },
    clumpingK: 0.3,
    ...sized(420, 80, { least: 120, most: 800, limit: 350 }),
  },
  {
    ...seaCucumber,
    ...named('Actinopyga mauritiana', 'surf redfish', 'surf'),
    habitats: flats,
    perHa: { 'north flat': steady(40), 'south flat': steady(40) },
    clumpingK: 0.3,
    ...sized(200, 35, { least: 60, most: 350, limit: 200 }),
  },
  {
    ...seaCucumber,
    ...named('Bohadschia argus', 'leopardfish', 'leopard'),
    habitats: ['seagrass', 'reef terrace'],
    perHa: { 'lagoon seagrass': steady(25), 'outer terrace': steady(25) },
    clumpingK: 0.4,
    ...sized(330, 50, { least: 100, most: 600, limit: null }),
  },
  {
    ...seaCucumber,
    ...named('Stichopus herrmanni', 'curryfish', 'curry'),
    habitats: ['seagrass'],
    perHa: { 'lagoon seagrass': everywhere([40, 0, 0]) },
    clumpingK: 0.6,
    ...sized(320, 50, { least: 100, most: 550, limit: 280 }),
  },
  {
    group: 'top shell',
    measure: 'basal diameter',
    ...named('Rochia nilotica', 'trochus', 'trochus'),
    aliases: ['Trochus niloticus', 'Tectus niloticus'],
    habitats: flats,
    perHa: { 'north flat': steady(100), 'south flat': steady(100) },
    clumpingK: 0.4,
    ...sized(95, 15, { least: 20, most: 165, limit: 80 }),
  },
  {
    ...giantClam,
    ...named('Tridacna maxima', 'small giant clam', 'small clam'),
    habitats: ['reef flat', 'reef terrace'],
    perHa: { 'north flat': steady(60), 'south flat': steady(60), 'outer terrace': steady(60) },
    clumpingK: 0.4,
    ...sized(130, 45, { least: 15, most: 400, limit: null }),
  },
  {
    ...giantClam,
    ...named('Tridacna gigas', 'large giant clam', 'large clam'),
    habitats: ['reef flat', 'reef terrace'],
    perHa: { 'north flat': steady(2), 'south flat': steady(2), 'outer terrace': steady(2) },
    clumpingK: 0.4,
    ...sized(250, 80, { least: 40, most: 1300, limit: null }),
  },
];

function named(name: string, commonName: string, code: string) {
  return { name, commonName, code, aliases: [] as readonly string[] };
}

function sized(mean: number, sd: number, range: { least: number; most: number; limit: number | null }) {
  const lengthMm = { mean, sd, least: range.least, most: range.most };
  return { lengthMm, sizeLimitMm: range.limit };
}

function everywhere(byYear: ByYear): Abundance {
  return { open: byYear, closed: byYear };
}

function steady(perHa: number): Abundance {
  return everywhere([perHa, perHa, perHa]);
}

/** Black teatfish: few where fishing goes on, more and more where it stopped. */
function recovering(): Abundance {
  return { open: [5, 5, 5], closed: [12, 18, 25] };
}
