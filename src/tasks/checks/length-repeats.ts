import type { SurveyInHand } from '../../survey/observation.ts';

/**
 * For each species identity, the chance that two of its measured lengths are equal: the sum of squared shares.
 * Worked out when it is first asked for: most surveys never ask.
 */
export function lengthRepeats(inHand: SurveyInHand): () => ReadonlyMap<string, number> {
  let repeats: ReadonlyMap<string, number> | null = null;
  return () => {
    repeats ??= workOut(inHand);
    return repeats;
  };
}

function workOut({ stations }: SurveyInHand): ReadonlyMap<string, number> {
  const histograms = new Map<string, Map<number, number>>();
  for (const { transects } of stations) {
    for (const { tallies } of transects) {
      for (const { speciesId, lengths } of tallies.values()) {
        if (lengths.length === 0) continue;
        let histogram = histograms.get(speciesId);
        if (histogram === undefined) {
          histogram = new Map();
          histograms.set(speciesId, histogram);
        }
        for (const { lengthMm, n } of lengths) histogram.set(lengthMm, (histogram.get(lengthMm) ?? 0) + n);
      }
    }
  }
  const repeats = new Map<string, number>();
  for (const [speciesId, histogram] of histograms) {
    let total = 0;
    let squares = 0;
    for (const n of histogram.values()) {
      total += n;
      squares += n * n;
    }
    repeats.set(speciesId, squares / (total * total));
  }
  return repeats;
}
