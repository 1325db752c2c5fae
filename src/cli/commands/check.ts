import { sentence } from '../../report/catalogue/sentence.ts';
import { type CheckedProblem, type CheckResult, checkSurveys } from '../../tasks/check-survey.ts';
import { checkedRow } from '../checked-row.ts';
import { asOfOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemCounts, problemLines } from '../print-problems.ts';
import { progressOn } from '../progress.ts';
import { today } from '../today.ts';

interface CheckOptions extends CommonOptions {
  readonly survey?: string;
  readonly answered?: true;
  readonly asOf: string | null;
}

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
      .option('--answered', 'list the answered questions as well')
      .addOption(asOfOption())
      .action(async (options: CheckOptions) => {
        const { asOf } = options;
        await withBookAsOf(io, options, async (store) => {
          const progress = progressOn(io);
          const result = await checkSurveys(store, {
            survey: options.survey ?? null,
            // Asked about the past, a day is judged as it was judged then.
            today: today(asOf === null ? io : { now: () => new Date(asOf) }),
            onSurvey: (name) => progress.step(`checking ${name}`),
          });
          progress.done();
          if (options.json) printRows(io, options, result);
          else printForPeople(io, options, result);
          const stopped = result.checked.some(({ problem }) => problem.severity === 'stop');
          setExitCode(stopped ? exitCodes.held : exitCodes.done);
        });
      }),
};

/** Rows hold every question with its answer; problems only the open ones. */
function printRows(io: Io, options: CheckOptions, { checked, dataVersion }: CheckResult): void {
  const settings = {
    book: options.book,
    survey: options.survey ?? null,
    answered: options.answered === true,
    asOf: options.asOf,
  };
  const problems = openOf(checked).map(({ problem }) => problem);
  printJson(io, { command: 'check', dataVersion, settings, rows: checked.map(checkedRow), problems });
}

function printForPeople(io: Io, options: CheckOptions, { checked, dataVersion }: CheckResult): void {
  const open = openOf(checked).map(({ problem }) => problem);
  for (const line of problemLines(open)) io.stdout(`${line}\n`);
  if (options.answered) for (const one of checked) for (const line of answeredLines(one)) io.stdout(line);
  const answered = checked.length - open.length;
  const beside = answered === 0 ? '' : `, ${answered} answered`;
  io.stdout(`${problemCounts(open)}${beside}; data version ${dataVersion}\n`);
}

function openOf(checked: readonly CheckedProblem[]): readonly CheckedProblem[] {
  return checked.filter(({ answer }) => answer === null);
}

function answeredLines({ problem, answer }: CheckedProblem): readonly string[] {
  if (answer === null) return [];
  const { answer: said, who, why, answeredAt } = answer;
  return [
    `answered: ${sentence('en', problem)}\n`,
    `  “${said}”, ${who}, ${answeredAt.slice(0, 10)}: ${why}\n`,
  ];
}
