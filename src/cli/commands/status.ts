import { type Command, Option } from 'commander';
import type {
  Comparison,
  ReferenceUsed,
  SizeShare,
  StatusAnswer,
} from '../../estimates/status/status-answer.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { statusLines } from '../../report/status-lines.ts';
import type { Reason } from '../../survey/message.ts';
import { estimateStatus, type StatusRequest } from '../../tasks/status.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodeOfAnswers } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';
import { referenceOption } from '../sourced-options.ts';

interface StatusOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species?: string;
  readonly by: StatusRequest['by'];
  readonly reference?: ReferenceUsed;
  readonly confidence: number;
  readonly accept?: { who: string; why: string };
}

export const statusCommand: CliCommand = {
  name: 'status',
  define: (io, setExitCode) =>
    statusOptions(
      commandOf(
        io,
        'status',
        'densities against published ones of the same method, and the shares of mature and legal animals',
        'slateline status --book north-reefs --species "black teatfish" --by zone',
      ),
    ).action(async (options: StatusOptions) => {
      await withBookAsOf(io, options, async (store) => {
        const { confidence, by } = options;
        const result = await estimateStatus(store, {
          survey: options.survey ?? null,
          species: options.species ?? null,
          by,
          reference: options.reference ?? null,
          confidence,
          acceptance: options.accept ?? null,
        });
        if (options.json) {
          const { json: _, ...settings } = options;
          const { dataVersion, problems } = result;
          printJson(io, {
            command: 'status',
            dataVersion,
            settings,
            rows: result.answers.map(statusRow),
            problems,
          });
        } else {
          for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
          if (options.accept !== undefined)
            io.stdout(`Accepted by ${options.accept.who}: ${options.accept.why}\n\n`);
          const lines = statusLines(result.answers, { confidence, species: result.species });
          io.stdout(`${lines.join('\n')}\n\nData version ${result.dataVersion}\n`);
        }
        const isKnown = ({ density }: StatusAnswer) => density.densityPerHa !== null;
        setExitCode(exitCodeOfAnswers(result.answers, { isHeld, isKnown, species: options.species }));
      });
    }),
};

function statusOptions(command: Command): Command {
  return command
    .option('--survey <name>', 'one survey; default: the latest')
    .option('--species <name>', 'one species only, by any of its names')
    .addOption(
      new Option('--by <scope>', 'survey, stratum or zone')
        .choices(['survey', 'stratum', 'zone'])
        .default('survey'),
    )
    .option(
      '--reference <density>',
      'in place of the published ones, as in "50: Author 2014: belts"; with a spread "50 cv 0.2: …"',
      referenceOption,
    )
    .option('--confidence <share>', 'of the intervals', numberOption('the confidence', 0.5, 0.999), 0.95)
    .option('--accept <who: why>', 'let what is held go ahead, by name and reason', acceptanceOption)
    .addOption(asOfOption());
}

/** Held is what was asked and not answered: a density that waits, or the typed reference. */
function isHeld({ density, comparisons }: StatusAnswer): boolean {
  const typed = comparisons.filter(({ reference }) => reference.content.meaning === 'typed');
  const waits = density.densityPerHa === null && density.reason?.code === 'unresolved-stations';
  return waits || typed.some(({ held }) => held !== null);
}

function statusRow(answer: StatusAnswer): Readonly<Record<string, unknown>> {
  const { density } = answer;
  return {
    survey: density.survey,
    species: density.species,
    scope: density.scope,
    stations: density.stations,
    stationsWithSpecies: density.stationsWithSpecies,
    animals: density.animals,
    measured: answer.measured,
    densityPerHa: density.densityPerHa,
    intervalPerHa: density.intervalPerHa,
    intervalMethod: density.intervalMethod,
    methods: answer.methods,
    beltWidthsM: answer.beltWidthsM,
    comparisons: answer.comparisons.map(comparisonRow),
    atMaturity: answer.atMaturity.map(shareRow),
    atLegalSize: answer.atLegalSize === null ? null : shareRow(answer.atLegalSize),
    reason: inWords(density.reason),
    reasonCode: density.reason?.code ?? null,
  };
}

function comparisonRow({ reference, held, limitations, ...numbers }: Comparison) {
  const { what: _, ...content } = reference.content;
  return {
    reference: { ...content, source: reference.source, status: reference.status, note: reference.note },
    ...numbers,
    held: inWords(held),
    heldCode: held?.code ?? null,
    limitations: limitations.map((one) => sentence('en', one)),
  };
}

function shareRow({ reason, ...rest }: SizeShare) {
  return { ...rest, reason: inWords(reason) };
}

function inWords(reason: Reason | null): string | null {
  return reason === null ? null : sentence('en', reason);
}
