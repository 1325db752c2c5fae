/** Parses the arguments, runs one command, and turns whatever happens into an exit code and a sentence. */

import { Command, CommanderError, Help, type Option } from 'commander';
import { failureSentence } from '../report/catalogue/sentence.ts';
import { Failure } from '../survey/failure.ts';
import { nearestName } from '../survey/nearest-name.ts';
import { commands } from './commands.ts';
import { exitCodeOfFailure, exitCodes } from './exit-codes.ts';
import type { Io } from './io.ts';
import { programVersion } from './program-version.ts';

/** Runs one command line (without `node` and the script). Never throws. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  let exitCode: number = exitCodes.done;
  const program = programOf(io, (code) => {
    exitCode = code;
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return exitCode;
  } catch (error) {
    return explain(error, args, io);
  }
}

function programOf(io: Io, setExitCode: (code: number) => void): Command {
  const program = new Command('slateline')
    .description("From divers' slates to advice that holds: import, check, estimate, report.")
    .version(programVersion(), '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [verb]', 'print the help of a verb')
    .enablePositionalOptions();
  for (const command of commands) program.addCommand(command.define(io, setExitCode));
  for (const command of [program, ...program.commands]) quieten(command, io);
  program.addHelpText(
    'after',
    '\nExample: slateline demo --book demo-book, then slateline density --book demo-book\n',
  );
  return program;
}

function quieten(command: Command, io: Io): void {
  command.exitOverride().showSuggestionAfterError(false);
  command.configureOutput({ writeOut: io.stdout, writeErr: () => {}, getOutHelpWidth: () => 100 });
  command.createHelp = () => Object.assign(new Help(), { sortSubcommands: false });
}

function explain(error: unknown, args: readonly string[], io: Io): number {
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return exitCodes.done;
    return refuse(io, args, { code: 'wrong-use', message: usageSentence(error, args) }, exitCodes.wrongUse);
  }
  if (error instanceof Failure) {
    const refusal = { code: error.code, message: failureSentence('en', error) };
    return refuse(io, args, refusal, exitCodeOfFailure(error.code));
  }
  const message = 'internal error: a fault of the program, not of your data; what was written before stands';
  if (io.env.SLATELINE_TRACE && error instanceof Error) io.stderr(`${error.stack}\n`);
  return refuse(io, args, { code: 'internal-error', message }, exitCodes.ourFault);
}

interface Refusal {
  readonly code: string;
  readonly message: string;
}

/** One sentence for people; for programs the one object they were promised, with the refusal as its problem. */
function refuse(io: Io, args: readonly string[], { code, message }: Refusal, exitCode: number): number {
  io.stderr(`${message}\n`);
  if (args.includes('--json')) {
    const problems = [{ code, severity: 'stop', message }];
    const command = commands.find((one) => one.name === args[0])?.name ?? null;
    const answer = {
      command,
      version: programVersion(),
      dataVersion: null,
      settings: {},
      rows: [],
      problems,
    };
    io.stdout(`${JSON.stringify(answer, null, 2)}\n`);
  }
  return exitCode;
}

function usageSentence(error: CommanderError, args: readonly string[]): string {
  const verb = commands.find((command) => command.name === args[0]);
  if (error.code === 'commander.unknownOption') return unknownOption(error, verb?.name, args);
  if (error.code === 'commander.help' || args.length === 0) {
    return `a verb is missing: one of ${commands.map((command) => command.name).join(', ')}; slateline --help tells more`;
  }
  if (error.code === 'commander.unknownCommand' || error.code === 'commander.excessArguments') {
    const written = args[0] ?? '';
    if (verb === undefined) {
      const nearest = nearestName(
        written,
        commands.map((command) => command.name),
      );
      return `there is no verb "${written}"${nearest === null ? '' : `; did you mean "${nearest}"?`}`;
    }
  }
  return `${error.message.replace(/^error: /, '')}; slateline ${verb?.name ?? ''} --help tells more`;
}

function unknownOption(error: CommanderError, verb: string | undefined, args: readonly string[]): string {
  const written = /'([^']+)'/.exec(error.message)?.[1] ?? args.find((arg) => arg.startsWith('-')) ?? '';
  const known = verb === undefined ? [] : optionsOf(verb);
  const nearest = nearestName(written, known) ?? nearestByStart(written, known);
  const hint = nearest === null ? `slateline ${verb ?? ''} --help lists them` : `did you mean ${nearest}?`;
  return `there is no option ${written}${verb === undefined ? '' : ` for "${verb}"`}; ${hint}`;
}

function nearestByStart(written: string, known: readonly string[]): string | null {
  return known.find((option) => option.startsWith(written) || written.startsWith(option)) ?? null;
}

const silentIo: Io = {
  stdout: () => {},
  stderr: () => {},
  env: {},
  cwd: '',
  now: () => new Date(0),
  newId: () => '',
  device: '',
  user: '',
  isTerminal: false,
};

function optionsOf(verb: string): readonly string[] {
  const command = commands.find((one) => one.name === verb)?.define(silentIo, () => {});
  return (command?.options ?? []).map((option: Option) => option.long ?? '').filter((long) => long !== '');
}
