import { writeXlsx } from 'hucre/xlsx';
import { describe, expect, test } from 'vitest';
import { joined, writeZip, zipRecord } from '../../test/fuzz/mutate.ts';
import { readTables } from './read-tables.ts';
import { writeWorkbookBytes } from './workbook.ts';
import { faultOfZip } from './zip-directory.ts';

const header = ['survey', 'station', 'transect', 'species', 'count'];
const codes = ({ problems }: Awaited<ReturnType<typeof readTables>>) => problems.map((p) => p.code);
const read = (bytes: Uint8Array, name = 'evening.xlsx') => readTables([{ name, bytes }]);
const row = (transect: string, count: number | null) => ['A', 'S1', transect, 'sandfish', count];

describe('a workbook that a person made', () => {
  test('the value a formula showed is read and noted; a formula without a value is a stop', async () => {
    const sheet = { name: 'counts', rows: [header, row('T1', null), row('T2', null)] };
    const withValue = new Map([['1,4', { formula: '2+3', formulaResult: 5, value: 5 }]]);
    const bytes = await writeXlsx({ sheets: [{ ...sheet, rows: sheet.rows.slice(0, 2), cells: withValue }] });
    const good = await read(bytes);
    expect(codes(good)).toEqual(['formula-values-read']);
    expect(good.value.rows.tallies[0]?.row.count).toBe(5);
    const without = new Map([['2,4', { formula: '2+3' }]]);
    const bad = await read(
      await writeXlsx({
        sheets: [{ ...sheet, rows: [header, row('T1', 1), row('T2', null)], cells: without }],
      }),
    );
    expect(bad.problems.filter((p) => p.code === 'formula-without-value')).toMatchObject([
      { severity: 'stop', value: 'E3' },
    ]);
  });

  test('merged cells in the table are a stop that names them; merged titles above it are not', async () => {
    const rows = [['Counts of March', null], header, row('T1', 1), [null, null, 'T2', 'sandfish', 2]];
    const merges = [
      { startRow: 0, startCol: 0, endRow: 0, endCol: 4 },
      { startRow: 2, startCol: 0, endRow: 3, endCol: 0 },
    ];
    const { problems } = await read(await writeXlsx({ sheets: [{ name: 'counts', rows, merges }] }));
    expect(problems.filter((p) => p.code === 'merged-cells').map((p) => p.value)).toEqual(['A3:A4']);
    expect(problems.filter((p) => p.code === 'rows-above-header')).toHaveLength(1);
  });

  test('a hidden sheet is noted and not read', async () => {
    const sheets = [
      { name: 'counts', rows: [header, row('T1', 1)] },
      {
        name: 'targets',
        rows: [
          ['survey', 'species'],
          ['A', 'sandfish'],
        ],
        hidden: true,
      },
    ];
    const result = await read(await writeXlsx({ sheets }));
    expect(codes(result)).toEqual(['hidden-sheet']);
    expect(result.value.rows.targets).toEqual([]);
  });
});

describe('a workbook that would fill the memory', () => {
  const bomb = new Uint8Array(600_000_000 / 100);

  test('a directory that promises too much is refused before anything is unpacked', async () => {
    const part = { name: 'xl/worksheets/sheet1.xml', content: bomb };
    const bytes = writeZip(Array.from({ length: 100 }, () => part));
    expect(bytes.length).toBeLessThan(1_000_000);
    expect(faultOfZip(bytes)).toBe('too large');
    const { problems } = await read(bytes);
    expect(problems).toMatchObject([
      { code: 'file-too-large', severity: 'stop', parameters: { limitMb: 500 } },
    ]);
  });

  test('a part that grows beyond what its directory promises is stopped while it is unpacked', async () => {
    const good = await writeWorkbookBytes([{ name: 'counts', header, rows: [row('T1', 1)] }]);
    expect(faultOfZip(good)).toBeNull();
    const small = writeZip([{ name: '[Content_Types].xml', content: bomb }]);
    // Six megabytes of zeros pack into some kilobytes; the directory and the local header say 100 bytes.
    const lying = Uint8Array.from(small);
    const view = new DataView(lying.buffer);
    view.setUint32(22, 100, true);
    const directory = view.getUint32(lying.length - 6, true);
    view.setUint32(directory + 24, 100, true);
    expect(faultOfZip(lying)).toBeNull();
    expect(codes(await read(lying))).toEqual(['file-too-large']);
  });

  test('a part of unknown size is refused', () => {
    const name = new TextEncoder().encode('x');
    const directory = zipRecord(0x02014b50, { packed: 5000, unpacked: 0, name, offset: 0 });
    const end = new DataView(new ArrayBuffer(22));
    end.setUint32(0, 0x06054b50, true);
    end.setUint16(10, 1, true);
    expect(faultOfZip(joined(directory, new Uint8Array(end.buffer)))).toBe('too large');
  });
});
