/**
 * The import map of the house, enforced. Change the map in the same commit as the import, and say why.
 * Imports go down only; a package may be used in a room only when the room lists it here.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const source = resolve(import.meta.dirname, '../src');

interface Room {
  readonly rooms: readonly string[];
  readonly packages: readonly string[];
  readonly node: boolean;
}

const map: Readonly<Record<string, Room>> = {
  // numbers that know no survey; distributions and chance from kept libraries
  maths: { rooms: [], packages: ['@stdlib/*', 'pure-rand'], node: false },
  // the words and rules of the work
  survey: { rooms: [], packages: ['zod', 'fastest-levenshtein'], node: false },
  // what the counts say
  estimates: { rooms: ['maths', 'survey'], packages: [], node: false },
  // where to go and when; geodesy, magnetic model and polygon sets from kept libraries
  planning: {
    rooms: ['estimates', 'maths', 'survey'],
    packages: ['geographiclib-geodesic', 'geomagnetism', 'polyclip-ts'],
    node: false,
  },
  // text and bytes <-> survey words; one XML library for GPX and KML
  exchange: {
    rooms: ['planning', 'estimates', 'maths', 'survey'],
    packages: ['papaparse', 'hucre', 'zod', 'fastest-levenshtein', 'fast-xml-parser'],
    node: false,
  },
  // values -> figures, tables, sentences, documents
  report: {
    rooms: ['planning', 'estimates', 'maths', 'survey'],
    packages: ['@observablehq/plot'],
    node: false,
  },
  // one function per thing the officer does
  tasks: {
    rooms: ['report', 'exchange', 'planning', 'estimates', 'maths', 'survey'],
    packages: ['zod'],
    node: false,
  },
  // SQL
  store: { rooms: ['survey'], packages: ['kysely'], node: true },
  // HTTP: a function from Request to Response; the store, the files and the clock come as arguments
  server: {
    rooms: ['tasks', 'report', 'exchange', 'planning', 'estimates', 'maths', 'survey'],
    packages: ['hono', '@hono/zod-openapi', 'zod'],
    node: false,
  },
  // the screens in the browser: shows and keeps, never calculates; pictures' times from a kept library
  web: {
    rooms: ['tasks', 'report', 'exchange', 'planning', 'estimates', 'maths', 'survey'],
    packages: ['svelte', 'idb', 'zod', 'exifr'],
    node: false,
  },
  // opens the store and the files, joins everything
  cli: {
    rooms: ['server', 'store', 'tasks', 'report', 'exchange', 'planning', 'estimates', 'maths', 'survey'],
    packages: ['commander', 'linkedom', 'uuid', 'fastest-levenshtein', '@hono/node-server'],
    node: true,
  },
};

const importPattern =
  /(?:import|export)\s[^'"]*?from\s*['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)|^import\s+['"]([^'"]+)['"]/gm;

function filesOf(room: string): string[] {
  return readdirSync(join(source, room), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|svelte)$/.test(name) && !name.endsWith('.test.ts'))
    .map((name) => join(source, room, name));
}

function importsOf(file: string): string[] {
  return [...readFileSync(file, 'utf8').matchAll(importPattern)].map(
    (match) => match[1] ?? match[2] ?? match[3]!,
  );
}

function isAllowed(room: Room, own: string, file: string, name: string): boolean {
  if (name.startsWith('.')) {
    const target = relative(source, resolve(dirname(file), name)).split(/[\\/]/)[0]!;
    return target === own || room.rooms.includes(target) || (own === 'cli' && target === '..');
  }
  if (name.startsWith('node:')) return room.node;
  return room.packages.some((allowed) =>
    allowed.endsWith('/*')
      ? name.startsWith(allowed.slice(0, -1))
      : name === allowed || name.startsWith(`${allowed}/`),
  );
}

describe('the import map', () => {
  it('knows every room', () => {
    const rooms = readdirSync(source, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(rooms.map((entry) => entry.name).sort()).toEqual(Object.keys(map).sort());
  });

  for (const [name, room] of Object.entries(map)) {
    it(`lets ${name} import only what lies below it`, () => {
      const forbidden = filesOf(name).flatMap((file) =>
        importsOf(file)
          .filter((imported) => !isAllowed(room, name, file, imported))
          .map((imported) => `${relative(source, file)} imports ${imported}`),
      );
      expect(forbidden).toEqual([]);
    });
  }

  it('lets no pure room reach for the clock or for luck', () => {
    // The screens have a clock on the wall: they sign what was typed with the time.
    const pure = Object.entries(map).filter(([name, room]) => !room.node && name !== 'web');
    const reaches = pure.flatMap(([name]) =>
      filesOf(name).filter((file) =>
        /\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bperformance\.now\(/.test(readFileSync(file, 'utf8')),
      ),
    );
    expect(reaches.map((file) => relative(source, file))).toEqual([]);
  });
});
