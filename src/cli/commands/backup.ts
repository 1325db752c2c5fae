import { join, resolve } from 'node:path';
import { formatCount } from '../../report/numbers.ts';
import { type BackupMade, backupBook } from '../../store/backup-book.ts';
import { counted } from '../../survey/counted.ts';
import { type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';

interface BackupOptions extends CommonOptions {
  readonly to?: string;
  readonly keep: number;
}

export const backupCommand: CliCommand = {
  name: 'backup',
  define: (io) =>
    commandOf(
      io,
      'backup',
      'copy the book while it stays open, open the copy and compare it, keep the newest ten',
      'slateline backup --book north-reefs --to /media/stick/backups',
    )
      .option('--to <folder>', 'where backups lie; default: backups in the book')
      .option('--keep <n>', 'how many stay there', numberOption('the number kept', 1, 10_000, true), 10)
      .action(async (options: BackupOptions) => {
        const folder = resolve(io.cwd, options.book);
        const to = options.to === undefined ? join(folder, 'backups') : resolve(io.cwd, options.to);
        // Opened as always first: a damaged or newer book is said in its usual sentence, and none is copied.
        await withBook(io, options.book, async () => {
          const made = await backupBook({ folder, to, keep: options.keep, at: io.now() });
          if (options.json) printMade(io, { ...options, to }, made);
          else printForPeople(io, made);
        });
      }),
};

function printMade(io: Io, { json: _, ...settings }: BackupOptions, made: BackupMade): void {
  const { path, book, photos, bytes, removed, sameDisk } = made;
  const { revisions, dataVersion } = book;
  const rows = [{ backup: path, verified: true, dataVersion, revisions, photos, bytes, sameDisk, removed }];
  printJson(io, { command: 'backup', dataVersion, settings, rows, problems: [] });
}

function printForPeople(io: Io, { path, book, photos, removed, sameDisk }: BackupMade): void {
  io.stdout(`Backup made and compared: ${path}\n`);
  io.stdout(
    `Data version ${book.dataVersion}, ${counted(formatCount(book.revisions), 'revision')}, ${counted(formatCount(photos), 'photo')}\n`,
  );
  for (const old of removed) io.stdout(`Oldest removed: ${old}\n`);
  if (!sameDisk) return;
  io.stderr(
    'note: a backup on the disk of the book is half a backup, lost with the laptop; put one on a stick with --to\n',
  );
}
