import { resolve } from 'node:path';
import { createBook } from '../../store/book-folder.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { printJson } from '../json-output.ts';

export const newCommand: CliCommand = {
  name: 'new',
  define: (io) =>
    commandOf(io, 'new', 'make an empty survey book', 'slateline new --book north-reefs --name "North reefs"')
      .option('--name <text>', 'name of the programme, as it should stand on reports')
      .action(async (options: CommonOptions & { name?: string }) => {
        const folder = resolve(io.cwd, options.book);
        const name = options.name ?? folder.split(/[\\/]/).at(-1)!;
        const store = await createBook(folder, {
          name,
          invented: false,
          at: io.now().toISOString(),
          bookId: io.newId(),
        });
        const dataVersion = await store.dataVersion();
        await store.close();
        if (options.json) {
          printJson(io, {
            command: 'new',
            dataVersion,
            settings: { book: options.book, name },
            rows: [],
            problems: [],
          });
          return;
        }
        io.stdout(`Made the survey book "${name}" in ${options.book}.\n`);
        io.stdout(`Next: slateline import FOLDER --book ${options.book}\n`);
      }),
};
