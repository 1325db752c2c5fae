/** What other choices would mean: a table in animals, tonnes and share of the stock. */

import type { Catch, HarvestAnswer, HarvestOption } from '../estimates/harvest/harvest-answer.ts';
import { counted } from '../survey/counted.ts';
import { type Language, sentence } from './catalogue/sentence.ts';
import { formatCount, formatShort, formatSignificant, withDecimalMark } from './numbers.ts';
import { type Column, textTable } from './text-table.ts';

/** The table of other choices, with a line for the quota and the reasons where something cannot be told. */
export function optionTable({ options, catches, closure, weightReason }: HarvestAnswer): readonly string[] {
  if (options.length === 0) return [];
  const columns: readonly Column<HarvestOption>[] = [
    { head: 'what might be done otherwise', cell: optionName },
    {
      head: 'legal animals',
      cell: (one) =>
        one.kind === 'quota' || one.legalLowerAnimals === null ? '–' : formatCount(one.legalLowerAnimals),
      number: true,
    },
    ...catches.map(
      ({ rate }, i): Column<HarvestOption> => ({
        head: `at ${percent(rate)}`,
        cell: (one) => optionCell(one, i),
        number: true,
      }),
    ),
  ];
  const said = options.flatMap((one) => [...quotaLine(one, catches), ...reasonLine(one, weightReason)]);
  return [
    '',
    closure?.closed ? 'Other choices, were it open' : 'Other choices',
    '',
    textTable(columns, options),
    ...(said.length === 0 ? [] : ['', ...said]),
  ];
}

function optionName(option: HarvestOption): string {
  switch (option.kind) {
    case 'minimum-size':
      return `minimum size ${formatShort(Number(option.choice))} mm`;
    case 'closed-zone':
      return `nothing taken in zone “${option.choice}”`;
    case 'rotation':
      return `rotation: each part opened every ${option.choice === '1' ? 'year' : `${option.choice} years`}`;
    case 'quota':
      return `quota of ${option.choice} a year`;
  }
}

/** "567 animals, 0.29 t, 1.4 %". */
function optionCell(option: HarvestOption, i: number): string {
  if (option.kind === 'quota') return '–';
  const taken = option.catches[i];
  if (taken === undefined) return '–';
  const tonnes = taken.tonnes === null ? '' : `, ${formatTonnes(taken.tonnes)} t`;
  return `${formatCount(taken.animals)}${tonnes}, ${percent(taken.shareOfStock)}`;
}

function quotaLine(option: HarvestOption, catches: readonly Catch[]): readonly string[] {
  if (option.kind !== 'quota' || option.animals === null) return [];
  const other = option.choice.endsWith('t')
    ? ` (${counted(formatCount(option.animals), 'animal')})`
    : option.tonnes === null
      ? ''
      : ` (${formatTonnes(option.tonnes)} t)`;
  const whole = `${percent(option.shareOfStock!)} of the whole stock`;
  if (option.shareOfLegal === null) return [`  A quota of ${option.choice}${other} is ${whole}.`];
  const legal = `${percent(option.shareOfLegal)} of the lower limit of the legal stock`;
  return [
    `  A quota of ${option.choice}${other} is ${whole} and ${legal}${againstRates(option.shareOfLegal, catches)}.`,
  ];
}

/** A quota is a rate too: which of the chosen ones it goes beyond. */
function againstRates(shareOfLegal: number, catches: readonly Catch[]): string {
  if (catches.length === 0) return '';
  const passed = catches.filter(({ rate }) => shareOfLegal > rate).map(({ rate }) => percent(rate));
  if (passed.length === 0) return ': within each of the rates above';
  if (passed.length === catches.length) return ': more than any of the rates above';
  return `: more than ${passed.length === 1 ? 'a rate' : 'rates'} of ${passed.join(' and ')}`;
}

/** What is said of the whole answer already is not said again of a choice. */
function reasonLine(option: HarvestOption, said: HarvestAnswer['weightReason']): readonly string[] {
  return option.reason === null || option.reason.code === said?.code
    ? []
    : [`  ${optionName(option)}: ${sentence('en', option.reason)}.`];
}

/** Two decimals from a tenth of a tonne on: a catch is weighed in tens of kilograms. */
export function formatTonnes(tonnes: number, language: Language = 'en'): string {
  if (tonnes < 0.1 || tonnes >= 100) return formatSignificant(tonnes, 2, language);
  return withDecimalMark(tonnes.toFixed(2), language);
}

export function percent(share: number, language: Language = 'en'): string {
  return `${formatShort(Number((100 * share).toPrecision(share < 0.001 ? 1 : 2)), language)}\u00a0%`;
}
