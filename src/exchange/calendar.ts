/** Days and times as people and spreadsheets write them, turned into YYYY-MM-DD and HH:MM. */

/** The day in ISO form, or null when the text is no day of the calendar. */
export function readDay(text: string): string | null {
  const parts = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text);
  return parts === null ? null : isoDay(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

/**
 * A day whose parts cannot be mistaken: the year first (`2024/3/5`), or the month by its English name
 * (`5 Mar 2024`, `5-March-2024`, `March 5, 2024`). Null when the text is not of that kind.
 */
export function readPlainDay(text: string): string | null {
  const yearFirst = /^(\d{4})([./])(\d{1,2})\2(\d{1,2})$/.exec(text);
  if (yearFirst !== null) return isoDay(Number(yearFirst[1]), Number(yearFirst[3]), Number(yearFirst[4]));
  const dayFirst = /^(\d{1,2})[ .-]{1,2}([a-z]{3,9})[ .,-]{1,2}(\d{4})$/i.exec(text);
  if (dayFirst !== null) return isoDay(Number(dayFirst[3]), monthNamed(dayFirst[2]!), Number(dayFirst[1]));
  const monthFirst = /^([a-z]{3,9})\.? (\d{1,2}),? (\d{4})$/i.exec(text);
  if (monthFirst === null) return null;
  return isoDay(Number(monthFirst[3]), monthNamed(monthFirst[1]!), Number(monthFirst[2]));
}

/** The two readings of a day like `3/4/2024`; null when the text is of another kind. A reading that is no day is null. */
export function dayReadings(
  text: string,
): { readonly dayFirst: string | null; readonly monthFirst: string | null } | null {
  const parts = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(text);
  if (parts === null) return null;
  const [first, second, year] = [Number(parts[1]), Number(parts[3]), Number(parts[4])];
  return { dayFirst: isoDay(year, second, first), monthFirst: isoDay(year, first, second) };
}

/** First and last day of a range such as `16-17 Sept 2011`, `30 Sep - 2 Oct 11` or `2011-09-16 to 2011-09-17`. */
export function readDayRange(text: string): { readonly first: string; readonly last: string } | null {
  const ends = /^(.+?)\s*(?:-|–|\/|to|&|\+|and)\s*(\d{1,2}[ .-]+[a-z]{3,9}[ .,-]+\d{2,4})$/i.exec(text);
  if (ends !== null) {
    const last = readNamedDay(ends[2]!);
    const [day, month, year] = ends[1]!.split(/[ .]+/);
    if (last === null || !/^\d{1,2}$/.test(day!)) return null;
    const named = month === undefined ? Number(last.slice(5, 7)) : monthNamed(month);
    const first = isoDay(year === undefined ? Number(last.slice(0, 4)) : fullYear(year), named, Number(day));
    return inOrder(first, last);
  }
  const plain = /^(\d{4}-\d{1,2}-\d{1,2})\s*(?:to|\/|–|-|until)\s*(\d{4}-\d{1,2}-\d{1,2})$/i.exec(text);
  return plain === null ? null : inOrder(readDay(plain[1]!), readDay(plain[2]!));
}

function inOrder(first: string | null, last: string | null): { first: string; last: string } | null {
  return first === null || last === null || first > last ? null : { first, last };
}

function readNamedDay(text: string): string | null {
  const parts = /^(\d{1,2})[ .-]+([a-z]{3,9})[ .,-]+(\d{2}|\d{4})$/i.exec(text);
  return parts === null ? null : isoDay(fullYear(parts[3]!), monthNamed(parts[2]!), Number(parts[1]));
}

/** Two digits: 69 to 99 mean 1969 to 1999, as in POSIX, from memory. */
function fullYear(written: string): number {
  const year = Number(written);
  if (written.length !== 2) return year;
  return year + (year < 69 ? 2000 : 1900);
}

/** 1 to 12 for an English month written out or cut short, else 0. */
function monthNamed(name: string): number {
  const small = name.toLowerCase();
  return (
    monthNames.findIndex((month) => month.startsWith(small) || (small === 'sept' && month === 'september')) +
    1
  );
}

const monthNames = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];

/** The time as HH:MM, or null. Whole minutes only: seconds are accepted when they are zero. */
export function readTime(text: string): string | null {
  const parts = /^(\d{1,2}):(\d{2})(?::00)?$/.exec(text);
  if (parts === null) return null;
  return Number(parts[1]) < 24 && Number(parts[2]) < 60 ? `${parts[1]!.padStart(2, '0')}:${parts[2]}` : null;
}

/** Day of a spreadsheet's day number (days since 30 December 1899), as in cells that lost their date format. */
export function dayOfSerial(serial: number): string | null {
  const whole = Math.floor(serial);
  if (whole < 61 || whole > 2_958_465) return null;
  return new Date(Date.UTC(1899, 11, 30) + whole * 86_400_000).toISOString().slice(0, 10);
}

/** The form `serial`: a day number where nobody can say so by a cell format, as in CSV. */
export function readDayAsSerial(text: string): string | null {
  return /^\d{4,6}(\.\d+)?$/.test(text) ? dayOfSerial(Number(text)) : null;
}

/** Time of a spreadsheet's fraction of a day. */
export function timeOfSerial(serial: number): string | null {
  if (serial < 0 || serial >= 1) return null;
  const minutes = Math.round(serial * 1440);
  if (minutes >= 1440) return null;
  return `${twoDigits(Math.floor(minutes / 60))}:${twoDigits(minutes % 60)}`;
}

/**
 * Reads a day written in another form, such as `D/M/YYYY`, `M/D/YY` or `D MMM YYYY`; null when it does not fit.
 * Tokens: YYYY, YY (69 to 99 mean 1969 to 1999, as in POSIX, from memory), MM or M, DD or D, MMM (Jan, Feb, ...).
 */
export function readDayInForm(text: string, form: string): string | null {
  if (form === 'serial') return readDayAsSerial(text);
  const order: string[] = [];
  const pattern = form.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/YYYY|YY|MMM|MM|M|DD|D/g, (token) => {
    order.push(token);
    return tokenPatterns[token]!;
  });
  const parts = new RegExp(`^${pattern}$`, 'i').exec(text);
  if (parts === null) return null;
  let [year, month, day] = [0, 0, 0];
  order.forEach((token, i) => {
    const written = parts[i + 1]!;
    if (token === 'YYYY') year = Number(written);
    else if (token === 'YY') year = fullYear(written);
    else if (token === 'MMM') month = months.indexOf(written.toLowerCase()) + 1;
    else if (token.startsWith('M')) month = Number(written);
    else day = Number(written);
  });
  return isoDay(year, month, day);
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const tokenPatterns: Readonly<Record<string, string>> = {
  YYYY: '(\\d{4})',
  YY: '(\\d{2})',
  MMM: `(${months.join('|')})`,
  MM: '(\\d{1,2})',
  M: '(\\d{1,2})',
  DD: '(\\d{1,2})',
  D: '(\\d{1,2})',
};

/** The form of `likelyDay` is a guess for a person to confirm, never used by itself. */
export function likelyDay(text: string): string | null {
  const parts = /^(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})$/.exec(text);
  if (parts === null) return null;
  const [first, second, third] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  if (parts[1]!.length === 4) return isoDay(first, second, third);
  if (parts[3]!.length !== 4) return null;
  return second > 12 ? isoDay(third, first, second) : isoDay(third, second, first);
}

/** The day in ISO form when the calendar has it, else null. */
export function isoDay(year: number, month: number, day: number): string | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists = year >= 1000 && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists ? date.toISOString().slice(0, 10) : null;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
