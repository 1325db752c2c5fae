import { Option } from 'commander';
import { lengthWeightLine, weightOfLengthG } from '../../estimates/biomass/length-weight-line.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { formatCount } from '../../report/numbers.ts';
import { valueInWords } from '../../report/value-words.ts';
import { valuesLines } from '../../report/values-lines.ts';
import { counted } from '../../survey/counted.ts';
import { Failure } from '../../survey/failure.ts';
import { type ValueKind, valueKinds } from '../../survey/value-words.ts';
import { type AddedValue, addValues, withdrawValue } from '../../tasks/own-values.ts';
import { type ListedValue, listValues } from '../../tasks/values.ts';
import { type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { readOneFile } from '../files.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { problemLines } from '../print-problems.ts';

interface ValuesOptions extends CommonOptions {
  readonly species?: string;
  readonly what?: ValueKind;
  readonly add?: string;
  readonly withdraw?: string;
  readonly source?: string;
  readonly who?: string;
  readonly why?: string;
}

export const valuesCommand: CliCommand = {
  name: 'values',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'values',
      'weights, conversions, published densities and sizes with their sources; bring in your own',
      'slateline values --book north-reefs --species sandfish --what conversion',
    )
      .option('--species <name>', 'one species only, by any of its names')
      .addOption(new Option('--what <kind>', 'one kind only').choices([...valueKinds]))
      .addOption(
        new Option('--add <file>', 'bring in your own values from a CSV file; all of them or none').conflicts(
          'withdraw',
        ),
      )
      .option('--withdraw <name>', 'withdraw an own value, by its name, as in "length-weight, live"')
      .option('--source <text>', 'of the value to withdraw, where several have the name')
      .option('--who <name>', 'who brings it in or withdraws it', io.user)
      .option('--why <text>', 'why, in the history; needed to withdraw')
      .action(async (options: ValuesOptions) => {
        if (options.add !== undefined) setExitCode(await add(io, options, options.add));
        else if (options.withdraw !== undefined) await withdraw(io, options, options.withdraw);
        else await list(io, options);
      }),
};

async function list(io: Io, options: ValuesOptions): Promise<void> {
  await withBook(io, options.book, async (store) => {
    const request = { species: options.species ?? null, what: options.what ?? null };
    const { values, species, dataVersion } = await listValues(store, request);
    if (options.json) {
      const settings = { book: options.book, ...request };
      printJson(io, { command: 'values', dataVersion, settings, rows: values.map(listedRow), problems: [] });
    } else io.stdout(`${valuesLines(values, species).join('\n')}\n\nData version ${dataVersion}\n`);
  });
}

function listedRow({ species, inBook, value }: ListedValue): Readonly<Record<string, unknown>> {
  const { content, standing, ...rest } = value;
  return { species, inBook, ...rest, standing: sentence('en', standing), content };
}

async function add(io: Io, options: ValuesOptions, path: string): Promise<number> {
  const file = readOneFile(path, io.cwd);
  return withBook(io, options.book, async (store) => {
    const tools = { store, signature: signatureOf(io, options, `values from ${file.name}`), newId: io.newId };
    const { added, problems, dataVersion } = await addValues(file, tools);
    const stops = problems.some((problem) => problem.severity === 'stop');
    if (options.json) {
      const settings = { book: options.book, add: path, who: options.who };
      printJson(io, { command: 'values', dataVersion, settings, rows: added, problems });
    } else {
      for (const line of problemLines(problems)) io.stderr(`${line}\n`);
      const said = stops
        ? [`Nothing was brought in from ${file.name}: mend it and bring it in again.`]
        : [
            `Brought in from ${file.name}: ${counted(formatCount(added.length), 'own value')}.`,
            ...added.flatMap(addedLines),
          ];
      io.stdout(`${said.join('\n')}\n`);
    }
    return stops ? exitCodes.held : exitCodes.done;
  });
}

/** Beside every pair what one animal weighs by it: a slip of the unit is seen before it is used. */
function addedLines({ species, name, source, value }: AddedValue): readonly string[] {
  const line = `  ${species}, ${name}: ${valueInWords(value)} (${source})`;
  if (value.what !== 'length-weight') return [line];
  const parameters = { lengthMm: 200, weightG: weightOfLengthG(lengthWeightLine(value), 200) };
  return [line, `      ${sentence('en', { code: 'weight-of-one', parameters })}`];
}

async function withdraw(io: Io, options: ValuesOptions, name: string): Promise<void> {
  if (options.species === undefined || options.why === undefined) {
    throw new Failure('withdraw-needs', {
      name,
      missing: options.species === undefined ? '--species' : '--why',
    });
  }
  const request = { name, species: options.species, source: options.source ?? null };
  await withBook(io, options.book, async (store) => {
    const tools = { store, signature: signatureOf(io, options, ''), newId: io.newId };
    const { withdrawn, species, dataVersion } = await withdrawValue(request, tools);
    if (options.json) {
      const settings = { book: options.book, ...request, who: options.who, why: options.why };
      printJson(io, {
        command: 'values',
        dataVersion,
        settings,
        rows: [{ species, ...withdrawn }],
        problems: [],
      });
    } else
      io.stdout(
        `Withdrawn: ${withdrawn.what} of ${species} (${withdrawn.source}), by ${options.who ?? ''}.\n`,
      );
  });
}

function signatureOf(io: Io, { who, why }: ValuesOptions, usual: string) {
  return { who: who ?? io.user, at: io.now().toISOString(), device: io.device, why: why ?? usual };
}
