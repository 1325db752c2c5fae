import { resolve } from 'node:path';
import { type Command, InvalidArgumentError, Option } from 'commander';
import { decodedText } from '../../exchange/text-encoding.ts';
import { planProblemLines } from '../../report/catalogue/plan-words.ts';
import { waypointsInLines, waypointsOutLines } from '../../report/waypoint-lines.ts';
import { counted } from '../../survey/counted.ts';
import { type WaypointsIn, waypointsIn } from '../../tasks/plan/waypoints-in.ts';
import { waypointsOut } from '../../tasks/plan/waypoints-out.ts';
import { type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { readOneFile } from '../files.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { planTools } from '../plan-tools.ts';
import { problemLines } from '../print-problems.ts';
import { writeWhole } from '../write-whole.ts';

interface WaypointOptions extends CommonOptions {
  readonly plan?: string;
  readonly survey?: string;
  readonly to?: string;
  readonly from?: string;
  readonly names: 'short' | 'code';
  readonly letters: number;
  readonly route?: true;
  readonly spares?: true;
  readonly near: number;
  readonly write?: true;
  readonly overwrite?: true;
  readonly by?: string;
}

export const waypointsCommand: CliCommand = {
  name: 'waypoints',
  define: (io, setExitCode) =>
    waypointOptions(
      commandOf(
        io,
        'waypoints',
        'stations of a plan to a GPS receiver, and its waypoints and tracks back beside the plan (GPX)',
        'slateline waypoints --plan spring --to spring.gpx --route --book north-reefs',
      ),
    ).action(async (options: WaypointOptions) => {
      if ((options.to === undefined) === (options.from === undefined)) {
        throw new InvalidArgumentError('say one of --to FILE.gpx and --from FILE.gpx');
      }
      if (options.to !== undefined) return writeOut(io, options, options.to);
      const stopped = await readIn(io, options, options.from!);
      setExitCode(stopped ? exitCodes.held : exitCodes.done);
    }),
};

function waypointOptions(command: Command): Command {
  return command
    .option('--plan <name>', 'the plan')
    .option('--survey <name>', 'the survey whose stations were visited (default: the one of the plan)')
    .option('--to <file>', 'write the stations of the plan to this GPX file')
    .option('--from <file>', 'read waypoints and tracks from this GPX file')
    .addOption(
      new Option('--names <kind>', 'names that any receiver takes, or the codes as they are')
        .choices(['short', 'code'])
        .default('short'),
    )
    .option('--letters <n>', 'letters of a short name', numberOption('the letters', 3, 30, true), 6)
    .option('--route', 'the list as a route as well')
    .option('--spares', 'spares as well')
    .option(
      '--near <m>',
      'a waypoint is a station’s up to so many metres',
      numberOption('the distance', 1, 100_000),
      200,
    )
    .option('--write', 'write the positions into the stations of the survey that have none')
    .option('--overwrite', 'also into those that have one')
    .option('--by <who>', 'who writes (default: you)');
}

async function writeOut(io: Io, options: WaypointOptions, to: string): Promise<void> {
  const { plan } = options;
  if (plan === undefined) throw new InvalidArgumentError('--to needs --plan: which plan');
  await withBook(io, options.book, async (store) => {
    const { names, letters } = options;
    const request = { plan, names, letters, route: options.route === true, spares: options.spares === true };
    const { gpx, rows, dataVersion } = await waypointsOut(store, request);
    writeWhole(resolve(io.cwd, to), gpx);
    if (options.json) {
      const { json: _, ...settings } = options;
      printJson(io, { command: 'waypoints', dataVersion, settings, rows, problems: [] });
      return;
    }
    io.stdout(`${waypointsOutLines(rows).join('\n')}\n\n`);
    const route = request.route ? ', and as a route in the order of the list' : '';
    io.stdout(
      `${counted(rows.length, 'waypoint')} in ${to}${route}. WGS84; exact: keep the file with the crew.\n`,
    );
  });
}

async function readIn(io: Io, options: WaypointOptions, from: string): Promise<boolean> {
  if (options.plan === undefined && options.survey === undefined) {
    throw new InvalidArgumentError('--from needs --plan or --survey: beside which stations');
  }
  const { name, bytes } = readOneFile(from, io.cwd);
  return withBook(io, options.book, async (store) => {
    const request = {
      ...{ file: name, text: decodedText(bytes) },
      ...{ plan: options.plan ?? null, survey: options.survey ?? null, nearM: options.near },
      ...{ letters: options.letters, write: options.write === true, overwrite: options.overwrite === true },
    };
    const result = await waypointsIn(request, planTools(io, store, options.by));
    if (options.json) {
      const { json: _, ...settings } = options;
      const { rows, dataVersion, problems, planProblems } = result;
      printJson(io, { command: 'waypoints', dataVersion, settings, rows, problems, planProblems });
    } else printForPeople(io, options, result);
    return [...result.problems, ...result.planProblems].some(({ severity }) => severity === 'stop');
  });
}

function printForPeople(io: Io, options: WaypointOptions, result: WaypointsIn): void {
  for (const line of problemLines(result.problems)) io.stderr(`${line}\n`);
  for (const line of planProblemLines(result.planProblems)) io.stderr(`${line}\n`);
  io.stdout(`${waypointsInLines(result.rows, result).join('\n')}\n\n`);
  if (!options.write)
    io.stdout('Nothing was written; --write puts the positions into the stations of the survey.\n');
  else if (result.written === 0) io.stdout('Nothing was written.\n');
  else io.stdout(`Written into ${result.survey}: ${result.written} positions, as one change.\n`);
}
