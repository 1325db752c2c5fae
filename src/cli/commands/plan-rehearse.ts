import { type Command, Option } from 'commander';
import { stops } from '../../planning/size/plan-problem.ts';
import { planProblemLines } from '../../report/catalogue/plan-words.ts';
import { planRehearseLines } from '../../report/plan-rehearse-lines.ts';
import { planRehearse, type RehearseRequest, type RehearseResult } from '../../tasks/plan-rehearse.ts';
import { asOfOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { asWritten, listOption, plainNumber } from '../plan-options.ts';

interface RehearseOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey: string;
  readonly plan?: string;
  readonly stations?: number;
  readonly species: readonly string[];
  readonly change: readonly number[];
  readonly stationsADay?: number;
  readonly moreDays: number;
  readonly interval: RehearseRequest['interval'];
  readonly surveys: number;
  readonly confidence: number;
  readonly seed: number;
}

export const planRehearseCommand: CliCommand = {
  name: 'rehearse',
  define: (io, setExitCode) =>
    rehearseOptionsOf(
      commandOf(
        io,
        'rehearse',
        'the report of a planned survey before it is swum: what it will be able to say',
        'slateline plan rehearse --book north-reefs --survey "North 2026" --stations 40 --species sandfish --stations-a-day 4',
      ),
    ).action(async (options: RehearseOptions) => {
      const request = requestOf(options);
      const result = await withBookAsOf(io, options, (store) => planRehearse(store, request));
      if (options.json) printRows(io, options, result);
      else printForPeople(io, result);
      setExitCode(stops(result.problems) ? exitCodes.held : exitCodes.done);
    }),
};

function rehearseOptionsOf(command: Command): Command {
  return command
    .requiredOption(
      '--survey <name>',
      'the earlier survey: its densities, its clumping, and what to compare with',
    )
    .addOption(new Option('--plan <name>', 'a drawn plan of the book, by name').conflicts('stations'))
    .option('--stations <n>', 'split as in the earlier survey; default: as many as there', plainNumber)
    .option(
      '--species <name>',
      'by any of its names; may be repeated; default: all targets',
      listOption(asWritten),
      [],
    )
    .option(
      '--change <factor>',
      'to be told, 0.5 a halving, 2 a doubling; may be repeated; default: 0.5',
      listOption(plainNumber),
      [],
    )
    .option('--stations-a-day <n>', 'that the boat works: then more days are rehearsed too', plainNumber)
    .option('--more-days <n>', 'to be rehearsed beside the plan', plainNumber, 2)
    .addOption(
      new Option('--interval <method>', 'as the report will print; lognormal is faster')
        .choices(['clumped', 'lognormal'])
        .default('clumped'),
    )
    .option('--surveys <n>', 'carried out for each species and change', plainNumber, 200)
    .option('--confidence <share>', 'of the report', plainNumber, 0.95)
    .option('--seed <n>', 'of the simulations', plainNumber, 1)
    .addOption(asOfOption());
}

function requestOf(options: RehearseOptions): RehearseRequest {
  return {
    ...{ survey: options.survey, plan: options.plan ?? null, stations: options.stations ?? null },
    ...{ species: options.species, changes: options.change.length === 0 ? [0.5] : options.change },
    ...{
      stationsPerDay: options.stationsADay ?? null,
      moreDays: options.moreDays,
      interval: options.interval,
    },
    ...{ surveys: options.surveys, confidence: options.confidence, seed: options.seed },
  };
}

function printRows(io: Io, options: RehearseOptions, result: RehearseResult): void {
  const { json: _, ...settings } = options;
  const alarmOf = (species: string) =>
    result.falseAlarms.find((one) => one.species === species)?.share ?? null;
  const rows = result.options.flatMap(({ extraStations, boatDays, rehearsal }) =>
    rehearsal.species.map((one) => ({
      ...{ ...one, stations: rehearsal.stations, extraStations, extraBoatDays: boatDays },
      strata: rehearsal.strata,
      // Of the plan itself; more stations change it little.
      falseAlarm: extraStations === 0 ? alarmOf(one.species) : null,
    })),
  );
  printJson(io, {
    ...{ command: 'plan rehearse', dataVersion: result.dataVersion, settings, rows, problems: [] },
    planProblems: result.problems,
  });
}

function printForPeople(io: Io, result: RehearseResult): void {
  const lines = planProblemLines(result.problems);
  if (stops(result.problems)) {
    io.stderr(`${lines.filter((line) => line.startsWith('stop')).join('\n')}\n`);
    return;
  }
  const said = lines.length > 0 ? ['', ...lines] : [];
  io.stdout(
    `${[...planRehearseLines(result), ...said, '', `Data version ${result.dataVersion}`].join('\n')}\n`,
  );
}
