/** Days as people write them: "7 September 2026", "du 7 au 15 septembre 2026". A table that is sorted keeps ISO days. */

import type { Language } from './catalogue/language.ts';

const months: Readonly<Record<Language, readonly string[]>> = {
  en: [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ],
  fr: [
    'janvier',
    'février',
    'mars',
    'avril',
    'mai',
    'juin',
    'juillet',
    'août',
    'septembre',
    'octobre',
    'novembre',
    'décembre',
  ],
};

interface Day {
  readonly year: string;
  readonly month: string;
  readonly day: string;
}

/** "7 September 2026", "1er septembre 2026"; what is no ISO day is left as it stands. */
export function formatDay(iso: string, language: Language): string {
  const day = dayOf(iso, language);
  return day === null ? iso : `${day.day} ${day.month} ${day.year}`;
}

/** "7 to 15 September 2026"; month and year once where they are the same. */
export function formatDays(from: string, to: string, language: Language): string {
  const [first, last] = [dayOf(from, language), dayOf(to, language)];
  if (from === to || first === null || last === null) {
    const one = formatDay(from, language);
    return from === to ? (language === 'fr' ? `le ${one}` : one) : between(one, to, language);
  }
  const isSameYear = first.year === last.year;
  const month = isSameYear && first.month === last.month ? '' : ` ${first.month}`;
  const year = isSameYear ? '' : ` ${first.year}`;
  return between(`${first.day}${month}${year}`, formatDay(to, language), language);
}

/** An ISO instant in UTC: "24 November 2026, 13:59 UTC". */
export function formatMoment(iso: string, language: Language): string {
  const [, day, time] = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})/.exec(iso) ?? [];
  if (day === undefined || time === undefined) return iso;
  const clock = language === 'fr' ? time.replace(':', '\u00a0h\u00a0') : time;
  return `${formatDay(day, language)}${language === 'fr' ? ' à ' : ', '}${clock} UTC`;
}

function between(from: string, to: string, language: Language): string {
  return language === 'fr' ? `du ${from} au ${to}` : `${from} to ${to}`;
}

function dayOf(iso: string, language: Language): Day | null {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso) ?? [];
  const name = months[language][Number(month) - 1];
  if (year === undefined || name === undefined) return null;
  const n = Number(day);
  return { year, month: name, day: language === 'fr' && n === 1 ? '1er' : `${n}` };
}
