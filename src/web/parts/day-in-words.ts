/** An ISO day with its name of the week: "Wed 9 September 2026". */
export function dayInWords(day: string, language: string): string {
  const form = new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, {
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });
  return form.format(new Date(`${day}T00:00:00Z`)).replace(/^(\p{L}+),/u, '$1');
}
