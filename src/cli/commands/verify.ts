import { join, resolve } from 'node:path';
import { textTable } from '../../report/text-table.ts';
import { type Finding, verifyBook } from '../../store/verify-book.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';

export const verifyCommand: CliCommand = {
  name: 'verify',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'verify',
      'look at every page, reference, revision, record and photo of a book or of a backup',
      'slateline verify --book north-reefs --backups /media/stick/backups',
    )
      .option('--backups <folder>', 'where backups lie, to compare photos; default: backups in the book')
      .action(async (options: CommonOptions & { readonly backups?: string }) => {
        const folder = resolve(io.cwd, options.book);
        const backups =
          options.backups === undefined ? join(folder, 'backups') : resolve(io.cwd, options.backups);
        const { dataVersion, findings } = await verifyBook({ folder, backups });
        const sound = findings.every((finding) => finding.sound);
        if (options.json) {
          const settings = { book: options.book, backups };
          printJson(io, { command: 'verify', dataVersion, settings, rows: findings, problems: [] });
        } else {
          io.stdout(`${findingsTable(findings)}\n${closing(sound, options.book)}\n`);
        }
        setExitCode(sound ? exitCodes.done : exitCodes.held);
      }),
};

function findingsTable(findings: readonly Finding[]): string {
  return textTable<Finding>(
    [
      { head: 'looked at', cell: ({ check }) => check },
      { head: 'result', cell: ({ sound }) => (sound ? 'sound' : 'DAMAGED') },
      { head: 'found', cell: ({ detail }) => detail },
    ],
    findings,
  );
}

function closing(sound: boolean, book: string): string {
  if (sound) return 'Sound: everything is as it was written.';
  return `Not sound: leave it as it is and restore the last backup with “slateline restore BACKUP --book ${book}”, which keeps this one aside.`;
}
