/** The shape every command has: options in common, parse, one task, print. */

import { Command, InvalidArgumentError, Option } from 'commander';
import type { Io } from './io.ts';

export interface CommonOptions {
  readonly book: string;
  readonly json?: true;
}

/** A command with `--book` and `--json`, its description and an example at the end of its help. */
export function commandOf(io: Io, name: string, description: string, example: string): Command {
  return new Command(name)
    .description(description)
    .option('--book <folder>', 'folder of the survey book', io.env['SLATELINE_BOOK'] ?? './survey-book')
    .option('--json', 'print one JSON object for programs')
    .helpOption('-h, --help', 'print this help')
    .addHelpText('after', `\nExample: ${example}\n`);
}

/** Reads a number option; the sentence of the refusal is completed by commander with the option's name. */
export function numberOption(
  what: string,
  low: number,
  high: number,
  whole = false,
): (text: string) => number {
  return (text) => {
    const value = Number(text);
    const fits = text.trim() !== '' && value >= low && value <= high && (!whole || Number.isInteger(value));
    if (fits) return value;
    throw new InvalidArgumentError(`${what} goes from ${low} to ${high}${whole ? ', whole numbers' : ''}`);
  };
}

/** `--as-of`, for every command that only reads: the book as it stood at the end of a day, or at an instant. */
export function asOfOption(): Option {
  return new Option('--as-of <moment>', 'the book as it stood: a day (its end, local time) or an ISO instant')
    .argParser(momentOf)
    .default(null, 'now');
}

/** The moment as an ISO instant in UTC. */
function momentOf(text: string): string {
  const day = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  // Without a zone the wall clock of this laptop is meant, as ISO 8601 has it.
  const moment = day ? new Date(`${text}T23:59:59.999`) : new Date(instant.test(text) ? text : Number.NaN);
  // A day that does not exist would slide into the next month.
  if (!Number.isNaN(moment.getTime()) && (day === null || moment.getDate() === Number(day[3]))) {
    return moment.toISOString();
  }
  throw new InvalidArgumentError('write a day as in 2026-09-30, or an instant as in 2026-09-30T18:00:00Z');
}

const instant = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:?\d\d)?$/;

/** Reads `who: why`. */
export function acceptanceOption(text: string): { who: string; why: string } {
  const at = text.indexOf(':');
  const who = text.slice(0, at).trim();
  const why = text.slice(at + 1).trim();
  if (at > 0 && who !== '' && why !== '') return { who, why };
  throw new InvalidArgumentError('write a name and a reason, as in "Officer A: sheets were never filled"');
}
