import { stoppedCounts } from '../../estimates/stopped-counts.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf, isSearched } from './check.ts';

/** Many dense belts with exactly as many animals as were to be measured: the count after 30 forgotten. */
export const check = checkOf('count-stopped-at-cap', ({ inHand }) => {
  const cap = inHand.protocol?.measureFirst ?? null;
  if (cap === null) return [];
  let dense = 0;
  let justBelow = 0;
  const atCap: string[] = [];
  for (const station of inHand.stations) {
    for (const transect of station.transects) {
      if (!isSearched(transect)) continue;
      for (const { count, lengths } of transect.tallies.values()) {
        if (count < cap) {
          if (count >= cap - 3 && count > 0) justBelow++;
          continue;
        }
        dense++;
        if (count > cap) continue;
        let measured = 0;
        for (const { n } of lengths) measured += n;
        if (measured === cap) atCap.push(`${station.record.code} ${transect.record.code}`);
      }
    }
  }
  if (!stoppedCounts({ atCap: atCap.length, dense, justBelow }).isStopped) return [];
  const where = [...new Set(atCap)].slice(0, 12).join(', ');
  const parameters = { cap, dense, where };
  return [
    problemOf('count-stopped-at-cap', { survey: inHand.survey.name }, { value: atCap.length, parameters }),
  ];
});
