import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { defaultDensitySettings } from '../../estimates/density/density-settings.ts';
import { writeGeoJson } from '../../exchange/maps/write-geojson.ts';
import { writeWorkbook } from '../../exchange/write-tables.ts';
import { densityLines } from '../../report/density-lines.ts';
import { createBook, openBook } from '../../store/book-folder.ts';
import { Failure } from '../../survey/failure.ts';
import type { Store } from '../../survey/store.ts';
import { demoMap, demoMapName, demoMapRequest } from '../../tasks/demo/demo-map.ts';
import { demoRows } from '../../tasks/demo/demo-rows.ts';
import { messyDay } from '../../tasks/demo/messy-day.ts';
import { estimateDensity } from '../../tasks/estimate-density.ts';
import { type ImportResult, importRows } from '../../tasks/import/import-rows.ts';
import { bringStrata } from '../../tasks/maps/bring-strata.ts';
import { readTotalsOf } from '../../tasks/read-totals.ts';
import { defaultReportRequest } from '../../tasks/report.ts';
import { type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { today } from '../today.ts';
import { writeReport } from '../write-report.ts';
import { writeWhole } from '../write-whole.ts';
import { totalsTable } from './import.ts';

interface DemoOptions extends CommonOptions {
  readonly seed: number;
  readonly report?: true;
}

export const demoCommand: CliCommand = {
  name: 'demo',
  define: (io) =>
    commandOf(
      io,
      'demo',
      'make the invented demo book: three surveys of islands that do not exist',
      'slateline demo --book demo-book --report',
    )
      .option('--seed <n>', 'of everything that is invented', numberOption('the seed', 0, 2 ** 31, true), 1)
      .option('--report', 'also estimate, print the headline numbers and write the report page')
      .action(async (options: DemoOptions) => {
        const store = await openDemoBook(io, resolve(io.cwd, options.book));
        try {
          const result = await fillDemoBook(io, store, options.seed);
          await writePractice(resolve(io.cwd, options.book), options.seed);
          if (options.json) {
            const settings = { book: options.book, seed: options.seed };
            const dataVersion = await store.dataVersion();
            printJson(io, {
              command: 'demo',
              dataVersion,
              settings,
              rows: result.totals,
              problems: result.problems,
            });
          } else {
            io.stdout(
              `The demo book is in ${options.book}. All of it is invented: the islands, the people, the animals.\n\n`,
            );
            io.stdout(`${totalsTable(result.totals)}\n`);
            io.stdout(
              `To practise: ${join(options.book, practiceFolder)} holds one messy field day (see the handbook).\n`,
            );
          }
          if (options.report) await showHeadlines(io, store, options);
        } finally {
          await store.close();
        }
      }),
};

const practiceFolder = 'practice';

/** The messy field day, as typed and with its stops mended, for a practice book of its own. */
async function writePractice(book: string, seed: number): Promise<void> {
  const { asTyped, stopsMended } = messyDay(seed);
  writeWhole(join(book, practiceFolder, demoMapName), writeGeoJson(demoMap()));
  writeWhole(join(book, practiceFolder, 'messy-field-day.xlsx'), await writeWorkbook(asTyped));
  writeWhole(
    join(book, practiceFolder, 'messy-field-day-stops-mended.xlsx'),
    await writeWorkbook(stopsMended),
  );
}

/** Makes the demo book and closes it again. */
export async function makeDemoBook(io: Io, folder: string): Promise<void> {
  const store = await openDemoBook(io, folder);
  try {
    await fillDemoBook(io, store, 1);
  } finally {
    await store.close();
  }
}

/** Invented data never enter a real book. */
async function openDemoBook(io: Io, folder: string): Promise<Store> {
  if (!existsSync(join(folder, 'book.sqlite'))) {
    const book = {
      name: 'Lorrin Islands (invented)',
      invented: true,
      at: io.now().toISOString(),
      bookId: io.newId(),
    };
    return createBook(folder, book);
  }
  const store = await openBook(folder);
  if ((await store.info()).invented) return store;
  await store.close();
  throw new Failure('not-a-demo-book', { folder });
}

async function fillDemoBook(io: Io, store: Store, seed: number): Promise<ImportResult> {
  const rows = demoRows(seed);
  const signature = {
    who: 'Demo script',
    at: io.now().toISOString(),
    device: io.device,
    why: `demo, seed ${seed}`,
  };
  const tools = { store, signature, newId: io.newId };
  const result = await importRows(
    { rows, readTotals: readTotalsOf(rows), readProblems: [], mapping: null, dryRun: false },
    tools,
  );
  const { problems } = await bringStrata(demoMapRequest(today(io)), tools);
  return { ...result, problems: [...result.problems, ...problems] };
}

async function showHeadlines(io: Io, store: Store, options: DemoOptions): Promise<void> {
  const settings = { ...defaultDensitySettings };
  const latest = (await store.all('survey')).toSorted((a, b) =>
    (a.starts ?? '') < (b.starts ?? '') ? 1 : -1,
  )[0]!;
  const { answers, species } = await estimateDensity(store, { survey: latest.name, species: null, settings });
  if (!options.json)
    io.stdout(`\n${densityLines(answers, { confidence: settings.confidence, species }).join('\n')}\n`);
  const written = await writeReport(io, store, { ...defaultReportRequest, book: options.book, to: null });
  if (!options.json) io.stdout(`\nThe report page: ${written.path}\n`);
}
