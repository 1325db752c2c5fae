/** A time of day as slates have it (810, 08:10, 8h10, 8.10), as HH:MM; null when it is none. */
export function readWrittenTime(text: string): string | null {
  const match = /^(\d{1,2})[:.h]?(\d\d)$/i.exec(text.trim());
  if (match === null) return null;
  const [hour, minute] = [Number(match[1]), Number(match[2])];
  if (hour > 23 || minute > 59) return null;
  return `${String(hour).padStart(2, '0')}:${match[2]}`;
}
