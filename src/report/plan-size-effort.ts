import { counted } from '../survey/counted.ts';
import { formatCount } from './numbers.ts';
import type { SizeSettings } from './plan-size-shapes.ts';

/** "38 stations, 10 boat days, cost 12 000". */
export function effortInWords(stations: number, { stationsPerDay, dayCost }: SizeSettings): string {
  const words = [counted(formatCount(stations), 'station')];
  if (stationsPerDay !== null) {
    const days = Math.ceil(stations / stationsPerDay);
    words.push(counted(formatCount(days), 'boat day'));
    if (dayCost !== null) words.push(`cost ${formatCount(days * dayCost)}`);
  }
  return words.join(', ');
}
