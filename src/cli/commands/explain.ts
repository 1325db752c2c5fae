import { InvalidArgumentError, Option } from 'commander';
import {
  type ExplainedFigure,
  type Explanation,
  explainedFigures,
} from '../../estimates/explain/explanation.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { explainLines } from '../../report/explain-lines.ts';
import { explainSteps } from '../../report/explain-steps.ts';
import { type ExplainRequest, explain } from '../../tasks/explain.ts';
import { acceptanceOption, asOfOption, type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';

interface ExplainOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species: string;
  readonly of: ExplainedFigure;
  readonly scope: ExplainRequest['scope'];
  readonly confidence: number;
  readonly accept?: { who: string; why: string };
}

export const explainCommand: CliCommand = {
  name: 'explain',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'explain',
      'where a figure comes from: stations, belts, animals, and the formula with the numbers put in',
      'slateline explain --book north-reefs --species sandfish --scope "stratum: lagoon" --of stock',
    )
      .requiredOption('--species <name>', 'the species, by any of its names')
      .option('--survey <name>', 'one survey; default: the latest')
      .addOption(
        new Option('--scope <which>', 'one stratum, site, zone or station, as in "zone: closed"')
          .argParser(scopeOption)
          .default({ by: 'survey', name: null }, 'the whole survey'),
      )
      .addOption(
        new Option('--of <figure>', 'which figure').choices([...explainedFigures]).default('density'),
      )
      .option('--confidence <share>', 'of the interval', numberOption('the confidence', 0.5, 0.999), 0.95)
      .option('--accept <who: why>', 'let a held answer go ahead, by name and reason', acceptanceOption)
      .addOption(asOfOption())
      .action(async (options: ExplainOptions) => {
        await withBookAsOf(io, options, async (store) => {
          const { species, of, scope, confidence } = options;
          const request = { survey: options.survey ?? null, species, of, scope, confidence };
          const result = await explain(store, { ...request, acceptance: options.accept ?? null });
          if (options.json) {
            const { json: _, ...settings } = options;
            const { dataVersion, problems } = result;
            const rows = [explanationRow(result.explanation)];
            printJson(io, { command: 'explain', dataVersion, settings, rows, problems });
          } else {
            for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
            const lines = explainLines(result.explanation, result.species);
            io.stdout(`${lines.join('\n')}\n\nData version ${result.dataVersion}\n`);
          }
          if (result.explanation.value === null) setExitCode(exitCodes.held);
        });
      }),
};

const kinds = ['survey', 'stratum', 'site', 'zone', 'station'] as const;

/** "survey", or "zone: closed". */
function scopeOption(text: string): ExplainRequest['scope'] {
  const at = text.indexOf(':');
  const by = kinds.find((kind) => kind === (at < 0 ? text : text.slice(0, at)).trim());
  const name = at < 0 ? '' : text.slice(at + 1).trim();
  if (by === 'survey' && at < 0) return { by, name: null };
  if (by !== undefined && by !== 'survey' && name !== '') return { by, name };
  throw new InvalidArgumentError(
    `write "survey", or a kind and a name as in "zone: closed"; the kinds are ${kinds.join(', ')}`,
  );
}

function explanationRow(explanation: Explanation): Readonly<Record<string, unknown>> {
  const { reason, cautions, leftOut, weights, ...rest } = explanation;
  return {
    ...rest,
    weights:
      weights === null
        ? null
        : { basis: weights.basis, state: weights.state, conversion: weights.conversion },
    steps: explainSteps(explanation),
    leftOut: leftOut.map(({ station, transect, reason: why }) => ({
      station,
      transect,
      reason: sentence('en', why),
    })),
    cautions: cautions.map((caution) => sentence('en', caution)),
    reason: reason === null ? null : sentence('en', reason),
    reasonCode: reason?.code ?? null,
  };
}
