import { type Command, Option } from 'commander';
import type { BiomassAnswer } from '../../estimates/biomass/biomass-answer.ts';
import { weightChoices } from '../../estimates/biomass/weight-candidates.ts';
import { biomassLines } from '../../report/biomass-lines.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { weightStates } from '../../survey/words.ts';
import { type BiomassRequest, estimateBiomass } from '../../tasks/estimate-biomass.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodeOfAnswers } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';

interface BiomassOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species?: string;
  readonly by: BiomassRequest['by'];
  readonly state?: NonNullable<BiomassRequest['state']>;
  readonly pair: BiomassRequest['pair'];
  readonly correction: BiomassRequest['correction'];
  readonly confidence: number;
  readonly accept?: { who: string; why: string };
}

export const biomassCommand: CliCommand = {
  name: 'biomass',
  define: (io, setExitCode) =>
    biomassOptions(
      commandOf(
        io,
        'biomass',
        'kilograms per hectare and tonnes over the sampled area, from lengths and weights',
        'slateline biomass --book north-reefs --species sandfish --by stratum',
      ),
    ).action(async (options: BiomassOptions) => {
      await withBookAsOf(io, options, async (store) => {
        const result = await estimateBiomass(store, requestOf(options));
        if (options.json) {
          const { json: _, ...settings } = options;
          const { dataVersion, problems } = result;
          printJson(io, {
            command: 'biomass',
            dataVersion,
            settings,
            rows: result.answers.map(biomassRow),
            problems,
          });
        } else {
          for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
          if (options.accept !== undefined) {
            io.stdout(`Accepted by ${options.accept.who}: ${options.accept.why}\n\n`);
          }
          const lines = biomassLines(result.answers, { ...result, confidence: options.confidence });
          io.stdout(`${lines.join('\n')}\n\nData version ${result.dataVersion}\n`);
        }
        const { species } = options;
        setExitCode(exitCodeOfAnswers(result.answers, { isHeld, isKnown, species }));
      });
    }),
};

function biomassOptions(command: Command): Command {
  return command
    .option('--survey <name>', 'one survey only')
    .option('--species <name>', 'one species only, by any of its names')
    .addOption(
      new Option('--by <scope>', 'survey, stratum, site or zone')
        .choices(['survey', 'stratum', 'site', 'zone'])
        .default('survey'),
    )
    .addOption(
      new Option('--state <state>', 'of the weight; default: the state of the weights at hand').choices([
        ...weightStates,
      ]),
    )
    .addOption(
      new Option('--pair <which>', 'own value, fit from weighed animals, or count times a mean weight')
        .choices([...weightChoices])
        .default('auto'),
    )
    .addOption(
      new Option('--correction <how>', 'from the middle weight of a fit to the mean one')
        .choices(['normal', 'smearing'])
        .default('normal'),
    )
    .option('--confidence <share>', 'of the interval', numberOption('the confidence', 0.5, 0.999), 0.95)
    .addOption(asOfOption())
    .option('--accept <who: why>', 'let a held answer go ahead, by name and reason', acceptanceOption);
}

function requestOf(options: BiomassOptions): BiomassRequest {
  return {
    survey: options.survey ?? null,
    species: options.species ?? null,
    by: options.by,
    state: options.state ?? null,
    pair: options.pair,
    correction: options.correction,
    confidence: options.confidence,
    acceptance: options.accept ?? null,
  };
}

const holds: ReadonlySet<string> = new Set([
  'unresolved-stations',
  'mixed-selection',
  'no-conversion',
  'processed-pair',
  'only-from-memory',
  'pair-implausible',
]);

function isHeld({ reason, kgPerHa }: BiomassAnswer): boolean {
  return reason !== null && holds.has(reason.code) && kgPerHa === null;
}

/** A range of published mean weights is a number too. */
function isKnown({ kgPerHa, intervalKgPerHa }: BiomassAnswer): boolean {
  return kgPerHa !== null || intervalKgPerHa !== null;
}

/** A row of the contract: reasons as sentences. */
function biomassRow(answer: BiomassAnswer): Readonly<Record<string, unknown>> {
  const { reason, cautions, ...numbers } = answer;
  return {
    ...numbers,
    reason: reason === null ? null : sentence('en', reason),
    reasonCode: reason?.code ?? null,
    cautions: cautions.map((caution) => sentence('en', caution)),
  };
}
