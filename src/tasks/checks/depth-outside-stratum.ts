import { stationCheck } from './check.ts';
import { depthOfBelt, outsideByM, rangeInWords } from './depths.ts';

/** A station deeper or shallower than its stratum: the wrong stratum, the wrong depth, or feet for metres. */
export const check = stationCheck('depth-outside-stratum', (station) => {
  const { stratum, record, transects } = station;
  if (stratum.depthMinM === null && stratum.depthMaxM === null) return null;
  const depths = [record.depthM, ...transects.map((one) => depthOfBelt(one, station))];
  let worst: number | null = null;
  for (const depthM of depths) {
    if (depthM === null || outsideByM(depthM, stratum) === 0) continue;
    if (worst === null || outsideByM(depthM, stratum) > outsideByM(worst, stratum)) worst = depthM;
  }
  if (worst === null) return null;
  return { value: worst, parameters: { stratum: stratum.name, range: rangeInWords(stratum) } };
});
