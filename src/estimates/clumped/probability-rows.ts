import { distinctCounts } from './distinct-counts.ts';
import { type LogProbabilitiesAt, lognormalPoisson } from './lognormal-poisson.ts';
import { LATTICE_STEP_LOG } from './mass-lattice.ts';
import { SQUARE_METRES_PER_HA, type StationCount } from './station-count.ts';

/**
 * Log-normal-Poisson probabilities remembered from one data set to the next: the same counts on the
 * same searched area come back over species and strata, and a row read before costs a look-up.
 */
export interface ProbabilityRows {
  readonly sigmas: Float64Array;
  /** Log likelihood of all stations at a lattice point of log density, one number per sigma. */
  likelihood(counts: readonly StationCount[]): (index: number, into: Float64Array) => void;
}

/** About 40 MB of rows; then everything is forgotten and the memory starts anew. */
const MOST_ROWS = 120_000;

/** Rows for a fixed list of standard deviations of the log rate. */
export function createProbabilityRows(sigmas: Float64Array): ProbabilityRows {
  const tables = new Map<number, LogProbabilitiesAt>();
  const rows = new Map<number, Map<number, Map<number, Float64Array>>>();
  let remembered = 0;

  function rowsOf(animals: number, areaM2: number): Map<number, Float64Array> {
    const ofArea = getOrMake(rows, areaM2, () => new Map<number, Map<number, Float64Array>>());
    return getOrMake(ofArea, animals, () => new Map<number, Float64Array>());
  }

  function forgetWhenFull(): void {
    if (remembered < MOST_ROWS) return;
    rows.clear();
    tables.clear();
    remembered = 0;
  }

  function likelihood(counts: readonly StationCount[]) {
    forgetWhenFull();
    const distinct = distinctCounts(counts).map((count) => ({
      stations: count.stations,
      logAreaHa: Math.log(count.areaM2 / SQUARE_METRES_PER_HA),
      known: rowsOf(count.animals, count.areaM2),
      table: getOrMake(tables, count.animals, () => lognormalPoisson(count.animals, sigmas)),
    }));
    return (index: number, into: Float64Array) => {
      into.fill(0);
      for (const { stations, logAreaHa, known, table } of distinct) {
        let row = known.get(index);
        if (row === undefined) {
          row = table(index * LATTICE_STEP_LOG + logAreaHa);
          known.set(index, row);
          remembered += 1;
        }
        for (let j = 0; j < into.length; j++) into[j] = into[j]! + stations * row[j]!;
      }
    };
  }

  return { sigmas, likelihood };
}

function getOrMake<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}
