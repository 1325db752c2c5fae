/** Lengths as they are typed, one number after another: "182 190 240 +12". */

export type LengthUnit = 'mm' | 'cm';

export interface TypedLength {
  readonly lengthMm: number;
  readonly n: number;
}

export interface LengthStream {
  readonly lengths: readonly TypedLength[];
  /** Counted and not measured ("+12"); null where nothing was written. */
  readonly more: number | null;
  /** A lone 0: looked for and not there. */
  readonly writtenZero: boolean;
  /** What is no length; never dropped silently. */
  readonly unread: readonly string[];
}

/**
 * Reads a stream of lengths in the unit of the protocol, in the order typed.
 *
 * "190x3" is three animals of one length, "+12" twelve more that were only counted, "18cm" a length that says its own
 * unit. A comma separates; only in centimetres, followed by one digit, is it a decimal comma ("18,5").
 */
export function readLengthStream(text: string, unit: LengthUnit): LengthStream {
  const lengths: TypedLength[] = [];
  const unread: string[] = [];
  let more: number | null = null;
  let zeros = 0;
  for (const word of wordsOf(text, unit)) {
    const counted = /^\+(\d{1,6})$/.exec(word);
    const length = readLength(word, unit);
    if (counted !== null) more = (more ?? 0) + Number(counted[1]);
    else if (length !== null) lengths.push(length);
    else if (/^0+$/.test(word)) zeros += 1;
    else unread.push(word);
  }
  const isZero = zeros > 0 && lengths.length === 0 && unread.length === 0 && !more;
  // Beside other lengths a nought is a slip, not an animal of no length.
  for (let i = 0; !isZero && i < zeros; i += 1) unread.push('0');
  return { lengths, more, writtenZero: isZero, unread };
}

/** Null when the word is no length. */
export function readLength(word: string, unit: LengthUnit): TypedLength | null {
  const match = /^(\d{1,5}(?:[.,]\d{1,2})?)(mm|cm)?(?:[x×*](\d{1,4}))?$/i.exec(word);
  if (match === null) return null;
  const value = Number(match[1]!.replace(',', '.'));
  const own = (match[2]?.toLowerCase() ?? unit) as LengthUnit;
  const lengthMm = own === 'cm' ? Math.round(value * 1000) / 100 : value;
  const n = match[3] === undefined ? 1 : Number(match[3]);
  return lengthMm > 0 && n > 0 ? { lengthMm, n } : null;
}

export function measuredIn(lengths: readonly TypedLength[]): number {
  return lengths.reduce((sum, { n }) => sum + n, 0);
}

/** As it would have been typed: the way back from the book to the cell. */
export function writeLengthStream(lengths: readonly TypedLength[], unit: LengthUnit): string {
  const words = lengths.map(({ lengthMm, n }) => {
    const value = unit === 'cm' ? lengthMm / 10 : lengthMm;
    return `${Number(value.toPrecision(8))}${n > 1 ? `x${n}` : ''}`;
  });
  return words.join(' ');
}

export function wordsOf(text: string, unit: LengthUnit): readonly string[] {
  const separators = unit === 'cm' ? /[\s;]+|,(?!\d(?!\d))/ : /[\s;,]+/;
  return text.split(separators).filter((word) => word !== '');
}
