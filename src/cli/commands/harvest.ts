import { InvalidArgumentError } from 'commander';
import type { HarvestAnswer, HarvestOption } from '../../estimates/harvest/harvest-answer.ts';
import { harvestWords } from '../../report/catalogue/harvest-words.ts';
import { sentence } from '../../report/catalogue/sentence.ts';
import { harvestLines } from '../../report/harvest-lines.ts';
import type { Reason } from '../../survey/message.ts';
import {
  type HarvestRequest,
  type HarvestResult,
  workOutHarvest,
  workOutTypedHarvest,
} from '../../tasks/harvest.ts';
import { commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import { type HarvestOptions, harvestOptions } from '../harvest-options.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBookAsOf } from '../open.ts';
import { problemLines } from '../print-problems.ts';

export const harvestCommand: CliCommand = {
  name: 'harvest',
  define: (io, setExitCode) =>
    harvestOptions(
      commandOf(
        io,
        'harvest',
        'what a chosen rate, size limit, closed zone, rotation or quota would mean; no rate by default',
        'slateline harvest --book north-reefs --species trochus --rate "0.05: plan 2026" --rate "0.1: plan 2026" --rate "0.2: plan 2026"',
      ),
    ).action(async (options: HarvestOptions) => {
      const done = (result: HarvestResult) => {
        print(io, options, result);
        const { answer } = result;
        const isMissing = answer.reason !== null || options.rate.length === 0 || answer.catches.length === 0;
        if (isMissing) setExitCode(exitCodes.held);
      };
      if (options.typed !== undefined) {
        done(workOutTypedHarvest(options.typed, choicesOf(options), options.species ?? null));
        return;
      }
      const request = requestOf(options);
      await withBookAsOf(io, options, async (store) => done(await workOutHarvest(store, request)));
    }),
};

function choicesOf(options: HarvestOptions): HarvestRequest['choices'] {
  const { limitReference } = options;
  return {
    rates: options.rate,
    confidence: options.confidence,
    limitReference:
      limitReference === undefined
        ? null
        : { densityPerHa: limitReference.value, source: limitReference.source },
    risk: options.risk,
    otherLimitMm: options.otherLimit ?? null,
    closedZone: options.closedZone ?? null,
    rotationYears: options.rotation ?? null,
    quota: options.quota ?? null,
  };
}

function requestOf(options: HarvestOptions): HarvestRequest {
  if (options.species === undefined) {
    throw new InvalidArgumentError('name the species with --species, or give every number with --typed');
  }
  return {
    survey: options.survey ?? null,
    species: options.species,
    choices: choicesOf(options),
    lower: options.lower,
    limitMm: options.limit ?? null,
    legalShare: options.legalShare ?? null,
    meanWeightKg: options.meanWeight ?? null,
    state: options.state ?? null,
    acceptance: options.accept ?? null,
  };
}

function print(
  io: Io,
  options: HarvestOptions,
  { answer, problems, species, dataVersion }: HarvestResult,
): void {
  if (options.json) {
    const { json: _, ...settings } = options;
    printJson(io, { command: 'harvest', dataVersion, settings, rows: [harvestRow(answer)], problems });
    return;
  }
  for (const line of problemLines(problems)) io.stderr(`${line}\n`);
  if (options.accept !== undefined) io.stdout(`Accepted by ${options.accept.who}: ${options.accept.why}\n\n`);
  const lines = harvestLines(answer, { species, rates: options.rate.length });
  io.stdout(
    `${lines.join('\n')}\n\n${dataVersion === null ? 'No book was read' : `Data version ${dataVersion}`}\n`,
  );
}

function harvestRow(answer: HarvestAnswer): Readonly<Record<string, unknown>> {
  const { weight, closure } = answer;
  return {
    ...answer,
    weight: weight === null ? null : { ...weight, cautions: weight.cautions.map(inWords) },
    weightReason: answer.weightReason === null ? null : inWords(answer.weightReason),
    /** By the closure rule: 0 animals may be taken where it says closed. */
    closedByRule: closure?.closed ?? null,
    options: answer.options.map(optionRow),
    reason: answer.reason === null ? null : inWords(answer.reason),
    reasonCode: answer.reason?.code ?? null,
    cautions: answer.cautions.map(inWords),
    decision: harvestWords.decision,
  };
}

function optionRow(option: HarvestOption): Readonly<Record<string, unknown>> {
  return { ...option, reason: option.reason === null ? null : inWords(option.reason) };
}

function inWords(reason: Reason): string {
  return sentence('en', reason);
}
