/**
 * What a file shows of its writer's habits: commas as decimal points, days before months.
 *
 * The habit is settled from all cells before the first one is read, and only when something in the file
 * proves it and nothing speaks against it. Otherwise each cell that could mean two things is asked about.
 */

import { dayReadings } from './calendar.ts';

export type CommaHabit = 'decimal' | 'thousands';
export type DayHabit = 'D/M' | 'M/D';

/** Gathers evidence text by text. `habit` is null while nothing proves one or evidence contradicts. */
export interface Evidence<Habit> {
  see(text: string): void;
  habit(): Habit | null;
  /** A text that proved the habit. */
  proof(): string | null;
  /** True when the habit changes how some cell is read. */
  matters(): boolean;
}

/** Evidence about commas in numbers, of a whole sheet. */
export function commaEvidence(stated: CommaHabit | null = null): Evidence<CommaHabit> {
  return evidenceOf<CommaHabit>(stated, (text) => {
    const bare = text.trim().replace(/^[+-]/, '');
    if (isDecimalComma(bare)) return 'decimal';
    if (isThousandsComma(bare)) return 'thousands';
    // A plain decimal point: whoever writes it does not mean a decimal comma elsewhere in the file.
    if (/^\d+\.\d+$/.test(bare)) return 'against decimal';
    return /^\d{1,3},\d{3}$/.test(bare) ? 'unclear' : null;
  });
}

/** `12,5`, `0,125`, `1234,5`, `1.234,5`: no grouping of thousands looks like that. */
function isDecimalComma(text: string): boolean {
  return /^(\d+,(\d{1,2}|\d{4,})|0+,\d+|\d{4,},\d+|\d{1,3}(\.\d{3})+,\d+)$/.test(text);
}

/** `1,234,567` and `1,234.5`. */
function isThousandsComma(text: string): boolean {
  return /^[1-9]\d{0,2}((,\d{3}){2,}(\.\d+)?|(,\d{3})+\.\d+)$/.test(text);
}

/** Evidence about the order of day and month, of one column. */
export function dayEvidence(): Evidence<DayHabit> {
  return evidenceOf<DayHabit>(null, (text) => {
    const readings = dayReadings(text.trim());
    if (readings === null) return null;
    const { dayFirst, monthFirst } = readings;
    if (dayFirst !== null && monthFirst !== null) return dayFirst === monthFirst ? null : 'unclear';
    if (dayFirst === null && monthFirst === null) return null;
    return dayFirst !== null ? 'D/M' : 'M/D';
  });
}

type Sign<Habit extends string> = Habit | `against ${Habit}` | 'unclear' | null;

function evidenceOf<Habit extends string>(
  stated: Habit | null,
  signOf: (text: string) => Sign<Habit>,
): Evidence<Habit> {
  const proofs = new Map<string, string>();
  let unclear = false;
  const proved = () => [...proofs].filter(([sign]) => !sign.startsWith('against '));
  return {
    see(text) {
      if (text === '' || stated !== null) return;
      const sign = signOf(text);
      if (sign === 'unclear') unclear = true;
      else if (sign !== null && !proofs.has(sign)) proofs.set(sign, text);
    },
    habit() {
      if (stated !== null) return stated;
      const [first, second] = proved();
      if (first === undefined || second !== undefined || proofs.has(`against ${first[0]}`)) return null;
      return first[0] as Habit;
    },
    proof: () => proved()[0]?.[1] ?? null,
    matters: () => stated === null && (unclear || proofs.size > 0),
  };
}

/** The plain decimal text of a number with commas, by the habit of its file. */
export function withoutCommas(text: string, habit: CommaHabit): string {
  const grouped = habit === 'decimal' ? /^[+-]?\d{1,3}(\.\d{3})+,\d+$/ : /^[+-]?\d{1,3}(,\d{3})+(\.\d+)?$/;
  if (grouped.test(text)) {
    return habit === 'decimal' ? text.replaceAll('.', '').replace(',', '.') : text.replaceAll(',', '');
  }
  return habit === 'decimal' ? text.replace(/^([+-]?\d*),(\d+)$/, '$1.$2') : text;
}
