import { resolve } from 'node:path';
import { formatCount } from '../../report/numbers.ts';
import { openBook } from '../../store/book-folder.ts';
import { restoreBook } from '../../store/restore-book.ts';
import { counted } from '../../survey/counted.ts';
import { Failure } from '../../survey/failure.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { printJson } from '../json-output.ts';

export const restoreCommand: CliCommand = {
  name: 'restore',
  define: (io) =>
    commandOf(
      io,
      'restore',
      'bring a backup back; the book that is there is moved aside, never overwritten',
      'slateline restore /media/stick/backups --book north-reefs',
    )
      .argument('<backup>', 'a backup, or the folder in which they lie: then the newest')
      .action(async (backup: string, options: CommonOptions) => {
        const folder = resolve(io.cwd, options.book);
        const restored = await restoreBook({ backup: resolve(io.cwd, backup), folder, at: io.now() });
        const dataVersion = await dataVersionNow(folder, restored.book.dataVersion);
        const { madeAt, photos, movedAside } = restored;
        const { revisions } = restored.book;
        if (options.json) {
          const rows = [{ backup: restored.backup, madeAt, dataVersion, revisions, photos, movedAside }];
          const settings = { book: options.book, backup };
          printJson(io, { command: 'restore', dataVersion, settings, rows, problems: [] });
          return;
        }
        io.stdout(`Restored ${restored.backup}, made at ${madeAt}, to ${options.book}\n`);
        io.stdout(
          `Data version ${dataVersion}, ${counted(formatCount(revisions), 'revision')}, ${counted(formatCount(photos), 'photo')}\n`,
        );
        if (movedAside !== null) io.stdout(`The book that was there lies in ${movedAside}\n`);
      }),
};

/** Opened once more, the way every other command opens it. */
async function dataVersionNow(folder: string, expected: string): Promise<string> {
  const store = await openBook(folder);
  try {
    const dataVersion = await store.dataVersion();
    if (dataVersion === expected) return dataVersion;
    const detail = `restored with data version ${dataVersion}, not ${expected}`;
    throw new Failure('disk-fault', { folder, detail });
  } finally {
    await store.close();
  }
}
