/** The options of `harvest`: everything that a manager may choose, with a source where it is a number. */

import { type Command, InvalidArgumentError, Option } from 'commander';
import type { ChosenRate } from '../estimates/harvest/harvest-answer.ts';
import { weightStates } from '../survey/words.ts';
import type { HarvestRequest, TypedHarvest } from '../tasks/harvest.ts';
import { acceptanceOption, asOfOption, type CommonOptions, numberOption } from './command.ts';
import { type SourcedNumber, sourcedOption } from './sourced-options.ts';
import { typedOption } from './typed-stock-option.ts';

export interface HarvestOptions extends CommonOptions {
  readonly asOf: string | null;
  readonly survey?: string;
  readonly species?: string;
  readonly rate: readonly ChosenRate[];
  readonly confidence: number;
  readonly lower: HarvestRequest['lower'];
  readonly limit?: number;
  readonly limitReference?: SourcedNumber;
  readonly risk: number;
  readonly otherLimit?: number;
  readonly closedZone?: string;
  readonly rotation?: number;
  readonly quota?: NonNullable<HarvestRequest['choices']['quota']>;
  readonly legalShare?: SourcedNumber;
  readonly meanWeight?: SourcedNumber;
  readonly state?: NonNullable<HarvestRequest['state']>;
  readonly typed?: TypedHarvest;
  readonly accept?: { who: string; why: string };
}

export function harvestOptions(command: Command): Command {
  return command
    .option('--survey <name>', 'one survey; default: the latest')
    .option('--species <name>', 'the species, by any of its names')
    .addOption(
      new Option(
        '--rate <share: source>',
        'of the legal stock in a year, at least three times, as in "0.05: plan 2026"',
      )
        .argParser(addRate)
        .default([], 'none'),
    )
    .option(
      '--confidence <share>',
      'one-sided, of the lower limit',
      numberOption('the confidence', 0.51, 0.999),
      0.9,
    )
    .addOption(
      new Option('--lower <method>', 'which lower limit is taken; safer is the smaller of the two')
        .choices(['safer', 'clumped', 'lognormal'])
        .default('safer'),
    )
    .option('--limit <mm>', 'minimum size, or "none"; default: the limit of the book', limitOption)
    .option(
      '--limit-reference <density: source>',
      'density below which nothing should be taken, as in "50 per ha: plan 2026"',
      sourcedOption('the limit reference', 0, 1e6, '50 per ha: plan 2026'),
    )
    .option(
      '--risk <share>',
      'chosen, of being below the limit reference',
      numberOption('the risk', 0.001, 0.999),
      0.1,
    )
    .option('--other-limit <mm>', 'what another minimum size would mean', numberOption('the size', 1, 5000))
    .option('--closed-zone <name>', 'what it would mean to take nothing in this zone')
    .option(
      '--rotation <years>',
      'what it would mean to open one part each year',
      numberOption('the number of years', 2, 50, true),
    )
    .option('--quota <amount>', 'what a quota would mean, as in "800" animals or "1.5 t"', quotaOption)
    .option(
      '--legal-share <share: source>',
      'of the animals, in place of the measured one',
      sourcedOption('the share', 0, 1, '0.38: port sampling 2025'),
    )
    .option(
      '--mean-weight <kg: source>',
      'of a legal animal, as in "0.52 kg: port sampling 2025"',
      sourcedOption('the weight', 0, 500, '0.52 kg: port sampling 2025'),
    )
    .addOption(new Option('--state <state>', 'of the weight').choices([...weightStates]))
    .option(
      '--typed <numbers>',
      'in place of a survey, as in "density 46.2, cv 0.24, area 875, share 0.38, weight 0.52"',
      typedOption,
    )
    .option('--accept <who: why>', 'let a held answer go ahead, by name and reason', acceptanceOption)
    .addOption(asOfOption());
}

const readRate = sourcedOption('a rate', 0, 1, '0.05: plan 2026');

export function addRate(text: string, before: readonly ChosenRate[]): readonly ChosenRate[] {
  const { value, source } = readRate(text);
  return [...before, { rate: value, source }];
}

function limitOption(text: string): number {
  return text.trim() === 'none' ? 0 : numberOption('the limit', 1, 5000)(text);
}

function quotaOption(text: string): NonNullable<HarvestRequest['choices']['quota']> {
  const [, number, unit] = /^([\d.]+)\s*(t|animals)?$/.exec(text.trim()) ?? [];
  const amount = Number(number);
  if (amount > 0) return unit === 't' ? { tonnes: amount } : { animals: amount };
  throw new InvalidArgumentError('write animals as in "800", or tonnes as in "1.5 t"');
}
