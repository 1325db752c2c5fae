/** Good inputs to be damaged: an invented evening in our own tables, as a workbook, and in somebody else's layout. */

import { type Mapping, readMapping } from '../../src/exchange/mapping.ts';
import type { NamedBytes } from '../../src/exchange/sheets.ts';
import { type SheetToWrite, writeWorkbookBytes } from '../../src/exchange/workbook.ts';

export interface BaseInput {
  readonly name: string;
  readonly files: readonly NamedBytes[];
  readonly mapping: Mapping | null;
}

const tables: readonly SheetToWrite[] = [
  {
    name: 'strata',
    header: ['stratum', 'habitat', 'area_ha'],
    rows: [
      ['reef flat', 'reef', 120.5],
      ['lagoon', 'sand', 300],
    ],
  },
  {
    name: 'stations',
    header: [
      'survey',
      'station',
      'stratum',
      'date',
      'time_start',
      'latitude',
      'longitude',
      'selection',
      'note',
    ],
    rows: [
      ['2026-1', 'S1', 'reef flat', '2026-03-01', '08:15', -17.5, 178.25, 'random', 'calm, "clear"'],
      ['2026-1', 'S2', 'lagoon', '2026-03-02', '09:40', -17.625, 178.5, 'random', 'two\nlines'],
      ['2026-1', 'S3', 'lagoon', '2026-03-14', '10:05', -17.75, 178.75, 'fixed', null],
    ],
  },
  {
    name: 'transects',
    header: ['survey', 'station', 'transect', 'length_m', 'width_m', 'status', 'none_seen', 'cover'],
    rows: ['S1', 'S2', 'S3'].flatMap((station) =>
      ['T1', 'T2'].map((transect) => [
        '2026-1',
        station,
        transect,
        40,
        2,
        'done',
        null,
        'sand:40; rubble:60',
      ]),
    ),
  },
  {
    name: 'species',
    header: ['species', 'group', 'common_name', 'aliases'],
    rows: [
      ['sandfish', 'sea cucumbers', 'sandfish', 'SF; sand fish'],
      ['trochus', 'snails', 'trochus', null],
    ],
  },
  {
    name: 'counts',
    header: ['survey', 'station', 'transect', 'species', 'count'],
    rows: ['S1', 'S2', 'S3'].flatMap((station) =>
      ['T1', 'T2'].flatMap((transect, i) => [
        ['2026-1', station, transect, 'sandfish', 3 + i],
        ['2026-1', station, transect, 'trochus', i],
      ]),
    ),
  },
  {
    name: 'lengths',
    header: ['survey', 'station', 'transect', 'species', 'length_mm'],
    rows: ['S1', 'S2', 'S3'].flatMap((station) =>
      [182, 175.5, 210].map((lengthMm) => ['2026-1', station, 'T1', 'sandfish', lengthMm]),
    ),
  },
];

const raw = [
  'when;where;bed;line;diver;beast;n;size;unsure',
  '03/04/2026;North;sand;1;B;SF;3;18,5;12-14',
  '25/04/2026;North;sand;1;B;TR;1;9,0;~20',
  '25/04/2026;South;reef;2;b;sf;;;<1',
  '26/04/2026;South;reef;2;C;no_obs;;9999;',
].join('\r\n');

const list = 'as_written,use\nSF,sandfish\nTR,trochus\n';

const mappingText = JSON.stringify({
  name: 'raw',
  sources: [
    {
      file: 'raw*.csv',
      missing: ['NA'],
      ask: [{ rule: 'look', column: 'unsure', matches: '~' }],
      fill: [
        {
          table: 'stations',
          distinct: true,
          firstOf: ['date'],
          columns: { survey: { constant: '2026-2' }, station: 'where', stratum: 'bed', date: 'when' },
        },
        {
          table: 'transects',
          distinct: true,
          columns: {
            survey: { constant: '2026-2' },
            station: 'where',
            transect: 'line',
            swim: { number: ['diver'], within: ['where', 'line'], ignoreCase: true },
            length_m: { constant: 40 },
            width_m: { constant: 2 },
            status: { constant: 'done' },
          },
        },
        {
          table: 'counts',
          add: true,
          leaveOut: [
            { rule: 'nothing', column: 'beast', equals: 'no_obs' },
            { rule: 'no number', column: 'n', blank: true },
          ],
          columns: {
            survey: { constant: '2026-2' },
            station: 'where',
            transect: 'line',
            swim: { number: ['diver'], within: ['where', 'line'], ignoreCase: true },
            species: {
              from: 'beast',
              ignoreCase: true,
              synonyms: { file: 'list.csv', from: 'as_written', to: 'use' },
            },
            count: { from: 'n', approximate: { range: 'low', about: 'the number', below: 'half' } },
          },
        },
      ],
    },
  ],
  blankTransects: 'none seen',
});

/** Made once; the damage is done to copies. */
export async function baseInputs(): Promise<readonly BaseInput[]> {
  const texts = tables.map(({ name, header, rows }) => csvFile(name, [header, ...rows]));
  const workbook = { name: 'evening.xlsx', bytes: await writeWorkbookBytes(tables) };
  const mapping = readMapping(mappingText, 'raw.json').value;
  if (mapping === null) throw new Error('the mapping of the fuzz run cannot be used');
  return [
    { name: 'own tables', files: texts, mapping: null },
    { name: 'workbook', files: [workbook], mapping: null },
    { name: 'mapped', files: [bytesOf('raw-1.csv', raw), bytesOf('list.csv', list)], mapping },
    { name: 'wide letters', files: texts.map(inUtf16), mapping: null },
  ];
}

function csvFile(name: string, rows: readonly (readonly (string | number | null)[])[]): NamedBytes {
  const cell = (value: string | number | null) =>
    /[",\n]/.test(String(value)) ? `"${String(value).replaceAll('"', '""')}"` : String(value ?? '');
  return bytesOf(`${name}.csv`, rows.map((row) => row.map(cell).join(',')).join('\n'));
}

function bytesOf(name: string, text: string): NamedBytes {
  return { name, bytes: new TextEncoder().encode(text) };
}

function inUtf16({ name, bytes }: NamedBytes): NamedBytes {
  const text = `\uFEFF${new TextDecoder().decode(bytes)}`;
  return { name, bytes: new Uint8Array(Buffer.from(text, 'utf16le')) };
}
