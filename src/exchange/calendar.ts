/** Days and times as people and spreadsheets write them, turned into YYYY-MM-DD and HH:MM. */

/** The day in ISO form, or null when the text is no day of the calendar. */
export function readDay(text: string): string | null {
  const parts = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text);
  return parts === null ? null : isoDay(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

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
    else if (token === 'YY') year = Number(written) + (Number(written) < 69 ? 2000 : 1900);
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

function isoDay(year: number, month: number, day: number): string | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists = year >= 1000 && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists ? date.toISOString().slice(0, 10) : null;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
