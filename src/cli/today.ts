import type { Io } from './io.ts';

/** The calendar day on the wall of this laptop, ISO form. */
export function today(io: Pick<Io, 'now'>): string {
  const now = io.now();
  const twoDigits = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}
