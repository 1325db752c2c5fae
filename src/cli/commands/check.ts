import { checkSurveys } from '../../tasks/check-survey.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { printJson, problemRow } from '../json-output.ts';
import { withBook } from '../open.ts';
import { problemCounts, problemLines } from '../print-problems.ts';

export const checkCommand: CliCommand = {
  name: 'check',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'check',
      'ask what has to be answered before the counts can speak',
      'slateline check --book north-reefs --survey "North 2026"',
    )
      .option('--survey <name>', 'one survey only')
      .action(async (options: CommonOptions & { survey?: string }) => {
        await withBook(io, options.book, async (store) => {
          const { problems, dataVersion } = await checkSurveys(store, options.survey ?? null);
          if (options.json) {
            const settings = { book: options.book, survey: options.survey ?? null };
            printJson(io, {
              command: 'check',
              dataVersion,
              settings,
              rows: problems.map(problemRow),
              problems,
            });
          } else {
            for (const line of problemLines(problems)) io.stdout(`${line}\n`);
            io.stdout(`${problemCounts(problems)}; data version ${dataVersion}\n`);
          }
          setExitCode(
            problems.some((problem) => problem.severity === 'stop') ? exitCodes.held : exitCodes.done,
          );
        });
      }),
};
