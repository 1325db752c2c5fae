import { formatCount } from '../../report/numbers.ts';
import { counted } from '../../survey/counted.ts';
import { answerProblem } from '../../tasks/answer.ts';
import { checkedRow } from '../checked-row.ts';
import { type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { today } from '../today.ts';

interface AnswerOptions extends CommonOptions {
  readonly code: string;
  readonly survey: string;
  readonly station?: string;
  readonly transect?: string;
  readonly swim?: number;
  readonly species?: string;
  readonly value?: string;
  readonly answer: string;
  readonly who: string;
  readonly why: string;
}

export const answerCommand: CliCommand = {
  name: 'answer',
  define: (io) =>
    commandOf(
      io,
      'answer',
      'answer a question of check; "none seen" marks the blank belts of a station in the same act',
      'slateline answer --code transect-unresolved --survey "North 2026" --station S7 --answer "none seen" --who "Recorder A" --why "slate looked at again" --book north-reefs',
    )
      .requiredOption('--code <code>', 'of the question, as check prints it with --json')
      .requiredOption('--survey <name>', 'in which survey')
      .option('--station <code>', 'at which station')
      .option('--transect <code>', 'on which transect')
      .option('--swim <n>', 'on which swim', numberOption('the swim', 1, 1000, true))
      .option('--species <name>', 'of which species, as the question names it')
      .option('--value <text>', 'the value in question, where two questions differ only in it')
      .requiredOption('--answer <text>', 'what is right')
      .requiredOption('--who <name>', 'who answers')
      .requiredOption('--why <text>', 'how they know')
      .action(async (options: AnswerOptions) => answerFor(io, options)),
};

async function answerFor(io: Io, options: AnswerOptions): Promise<void> {
  await withBook(io, options.book, async (store) => {
    const request = {
      code: options.code,
      survey: options.survey,
      station: options.station ?? null,
      transect: options.transect ?? null,
      swim: options.swim ?? null,
      species: options.species ?? null,
      value: options.value ?? null,
      answer: options.answer,
    };
    const signature = {
      who: options.who,
      at: io.now().toISOString(),
      device: io.device,
      why: options.why,
    };
    const result = await answerProblem(request, { store, signature, newId: io.newId, today: today(io) });
    if (options.json) {
      const settings = { book: options.book, ...request, who: options.who, why: options.why };
      const rows = result.answered.map(checkedRow);
      printJson(io, { command: 'answer', dataVersion: result.dataVersion, settings, rows, problems: [] });
      return;
    }
    for (const line of linesOf(result.answered.length, result.markedNoneSeen, options))
      io.stdout(`${line}\n`);
  });
}

function linesOf(answered: number, marked: number, { answer, who }: AnswerOptions): readonly string[] {
  const questions = counted(formatCount(answered), 'question');
  const belts = counted(formatCount(marked), 'blank transect');
  return [
    `Answered: ${questions} with “${answer}”, by ${who}.`,
    ...(marked > 0 ? [`Marked “none seen”: ${belts}.`] : []),
  ];
}
