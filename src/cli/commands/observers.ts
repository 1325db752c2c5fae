import { type Command, InvalidArgumentError } from 'commander';
import { markedByTwo, type SeenByTwo } from '../../estimates/observers/marked-by-two.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { calibrationLines, detectionLines, observersLines } from '../../report/observers-lines.ts';
import { calibrateLengths, compareObservers, type ObserversAnswer } from '../../tasks/observers.ts';
import { asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { readOneFile } from '../files.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';

interface ObserversOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species?: string;
  readonly confidence: number;
  readonly known?: string;
  readonly passMark?: number;
  readonly firstSaw?: number;
  readonly secondSaw?: number;
  readonly bothSaw?: number;
}

export const observersCommand: CliCommand = {
  name: 'observers',
  define: (io, setExitCode) =>
    observersOptions(
      commandOf(
        io,
        'observers',
        'how alike the divers count and measure, and whether a stratum and a person can be told apart',
        'slateline observers --book north-reefs --survey "North 2026"',
      ),
    ).action(async (options: ObserversOptions) => {
      const seen = seenOf(options);
      if (options.passMark !== undefined && options.known === undefined)
        throw new InvalidArgumentError('--pass-mark judges known lengths: add --known with the file');
      if (seen !== null && options.known !== undefined)
        throw new InvalidArgumentError('ask one thing at a time: --known, or --first-saw and the others');
      if (seen !== null) printDetection(io, options, seen);
      else if (options.known !== undefined) {
        if (!printCalibration(io, options, options.known)) setExitCode(exitCodes.held);
      } else await printAgreement(io, options);
    }),
};

function observersOptions(command: Command): Command {
  const animals = (who: string) => numberOption(`the animals that ${who} saw`, 0, 1_000_000, true);
  return command
    .option('--survey <name>', 'one survey only')
    .option('--species <name>', 'one species only, by any of its names')
    .option(
      '--confidence <share>',
      'of the agreement (ICC)',
      numberOption('the confidence', 0.5, 0.999),
      0.95,
    )
    .addOption(asOfOption())
    .option('--known <file>', 'instead: a CSV with observer, known_mm, estimated_mm; no book is read')
    .option('--pass-mark <mm>', 'of lengths, chosen by you', numberOption('the pass mark', 0.1, 10_000))
    .option(
      '--first-saw <n>',
      'instead: animals the first diver saw; no book is read',
      animals('the first diver'),
    )
    .option('--second-saw <n>', 'animals the second diver saw', animals('the second diver'))
    .option('--both-saw <n>', 'of those, animals matched by place along the tape', animals('both'));
}

/** All three numbers or none: what both saw is never worked out from two counts. */
function seenOf({ firstSaw, secondSaw, bothSaw }: ObserversOptions): SeenByTwo | null {
  if (firstSaw === undefined && secondSaw === undefined && bothSaw === undefined) return null;
  if (firstSaw === undefined || secondSaw === undefined || bothSaw === undefined) {
    throw new InvalidArgumentError(
      'give --first-saw, --second-saw and --both-saw together; what both saw is matched animal by animal along the tape, it does not follow from two counts',
    );
  }
  if (bothSaw <= Math.min(firstSaw, secondSaw)) return { firstSaw, secondSaw, bothSaw };
  throw new InvalidArgumentError('--both-saw cannot be more than either diver saw');
}

function settingsOf({ json: _, ...settings }: ObserversOptions): Readonly<Record<string, unknown>> {
  return settings;
}

function printDetection(io: Io, options: ObserversOptions, seen: SeenByTwo): void {
  const found = markedByTwo(seen);
  if (options.json)
    printJson(io, {
      command: 'observers',
      dataVersion: null,
      settings: settingsOf(options),
      rows: [found],
      problems: [],
    });
  else io.stdout(`${detectionLines(found, seen.bothSaw).join('\n')}\n`);
}

/** False when a row could not be read. */
function printCalibration(io: Io, options: ObserversOptions, path: string): boolean {
  const file = readOneFile(path, io.cwd);
  const passMarkMm = options.passMark ?? null;
  const { answers, problems } = calibrateLengths(file, passMarkMm);
  if (options.json) {
    printJson(io, {
      command: 'observers',
      dataVersion: null,
      settings: settingsOf(options),
      rows: answers,
      problems,
    });
  } else {
    for (const line of problemLines(problems)) io.stderr(`${line}\n`);
    io.stdout(`${calibrationLines(answers, passMarkMm).join('\n')}\n`);
  }
  return problems.length === 0;
}

async function printAgreement(io: Io, options: ObserversOptions): Promise<void> {
  const { confidence } = options;
  await withBookAsOf(io, options, async (store) => {
    const request = { survey: options.survey ?? null, species: options.species ?? null, confidence };
    const { answers, species, dataVersion } = await compareObservers(store, request);
    if (options.json) {
      const rows = answers.map(rowOf);
      printJson(io, { command: 'observers', dataVersion, settings: settingsOf(options), rows, problems: [] });
    } else io.stdout(`${observersLines(answers, species).join('\n')}\n\nData version ${dataVersion}\n`);
  });
}

function rowOf({ swims, strata, leftOut, ...rest }: ObserversAnswer): Readonly<Record<string, unknown>> {
  return {
    ...rest,
    swims: swims.map(({ reason, cautions, ...numbers }) => ({
      ...numbers,
      reason: reason === null ? null : sentence('en', reason),
      reasonCode: reason?.code ?? null,
      cautions: cautions.map((caution) => sentence('en', caution)),
    })),
    leftOut: leftOut.map((reason) => sentence('en', reason)),
    strata: { ...strata, cautions: strata.cautions.map((caution) => sentence('en', caution)) },
  };
}
