/** Parses the arguments, runs one command, and turns whatever happens into an exit code and a sentence. */

import { Command, CommanderError, Help, type Option } from 'commander';
import { failureSentence } from '../report/catalogue/sentence.ts';
import { Failure } from '../survey/failure.ts';
import { nearestName } from '../survey/nearest-name.ts';
import { type CalledVerb, verbCalled } from './called-verb.ts';
import { type CliCommand, commandsFor } from './commands.ts';
import { exitCodeOfFailure, exitCodes } from './exit-codes.ts';
import type { Io } from './io.ts';
import { programVersion } from './program-version.ts';

/** Runs one command line (without `node` and the script). Never throws. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  let exitCode: number = exitCodes.done;
  let commands: readonly CliCommand[] = [];
  try {
    commands = await commandsFor(args);
    const program = programOf(io, commands, (code) => {
      exitCode = code;
    });
    await program.parseAsync([...args], { from: 'user' });
    return exitCode;
  } catch (error) {
    return explain(error, { args, commands }, io);
  }
}

function programOf(io: Io, commands: readonly CliCommand[], setExitCode: (code: number) => void): Command {
  const program = new Command('slateline')
    .description("From divers' slates to advice that holds: import, check, estimate, report.")
    .version(programVersion(), '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [verb]', 'print the help of a verb')
    .enablePositionalOptions();
  for (const command of commands) program.addCommand(command.define(io, setExitCode));
  quieten(program, io);
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
  for (const verb of command.commands) quieten(verb, io);
}

/** What was written, and the verbs that were loaded for it. */
interface Written {
  readonly args: readonly string[];
  readonly commands: readonly CliCommand[];
}

function explain(error: unknown, written: Written, io: Io): number {
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return exitCodes.done;
    const refusal = { code: 'wrong-use', message: usageSentence(error, written) };
    return refuse(io, written, refusal, exitCodes.wrongUse);
  }
  if (error instanceof Failure) {
    const refusal = { code: error.code, message: failureSentence('en', error) };
    return refuse(io, written, refusal, exitCodeOfFailure(error.code));
  }
  const message = 'internal error: a fault of the program, not of your data; what was written before stands';
  if (io.env.SLATELINE_TRACE && error instanceof Error) io.stderr(`${error.stack}\n`);
  return refuse(io, written, { code: 'internal-error', message }, exitCodes.ourFault);
}

interface Refusal {
  readonly code: string;
  readonly message: string;
}

/** One sentence for people; for programs the one object they were promised, with the refusal as its problem. */
function refuse(io: Io, { args, commands }: Written, { code, message }: Refusal, exitCode: number): number {
  io.stderr(`${message}\n`);
  if (args.includes('--json')) {
    const problems = [{ code, severity: 'stop', message }];
    const command = verbCalled(args, commands)?.words.join(' ') ?? null;
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

function usageSentence(error: CommanderError, { args, commands }: Written): string {
  const called = verbCalled(args, commands);
  const words = called?.words ?? [];
  const verbs = called === null ? commands : called.verb.verbs;
  if (error.code === 'commander.unknownOption') return unknownOption(error, called, args);
  if (verbs !== undefined) return verbMissing(words, args[words.length], verbs);
  return `${error.message.replace(/^error: /, '')}; ${helpOf(words)} tells more`;
}

/** A word that should have been a verb of the program, or of `plan`, and is none or is not there. */
function verbMissing(
  words: readonly string[],
  written: string | undefined,
  verbs: readonly CliCommand[],
): string {
  const known = verbs.map((verb) => verb.name);
  const of = words.length === 0 ? '' : ` of "${words.join(' ')}"`;
  if (written === undefined || written.startsWith('-')) {
    return `a verb${of} is missing: one of ${known.join(', ')}; ${helpOf(words)} tells more`;
  }
  const nearest = nearestName(written, known);
  const there = of === '' || nearest !== null ? '' : `: ${known.join(', ')} are`;
  return `there is no verb "${written}"${of}${there}${nearest === null ? '' : `; did you mean "${nearest}"?`}`;
}

function helpOf(words: readonly string[]): string {
  return ['slateline', ...words, '--help'].join(' ');
}

function unknownOption(error: CommanderError, called: CalledVerb | null, args: readonly string[]): string {
  const written = /'([^']+)'/.exec(error.message)?.[1] ?? args.find((arg) => arg.startsWith('-')) ?? '';
  // `plan --json` lacks the verb more than it has an option too many.
  if (called?.verb.verbs !== undefined && everyOption(called.verb.verbs).includes(written))
    return verbMissing(called.words, undefined, called.verb.verbs);
  const known = called === null ? [] : optionsOf(called.verb);
  const nearest = nearestName(written, known) ?? nearestByStart(written, known);
  const hint = nearest === null ? `${helpOf(called?.words ?? [])} lists them` : `did you mean ${nearest}?`;
  return `there is no option ${written}${called === null ? '' : ` for "${called.words.join(' ')}"`}; ${hint}`;
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

function optionsOf(verb: CliCommand): readonly string[] {
  const { options } = verb.define(silentIo, () => {});
  return options.map((option: Option) => option.long ?? '').filter((long) => long !== '');
}

function everyOption(verbs: readonly CliCommand[]): readonly string[] {
  return verbs.flatMap(optionsOf);
}
