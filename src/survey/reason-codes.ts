/** Every reason why an answer, or a part of it, is null or was left out. The catalogue holds the sentences. */
export type ReasonCode =
  // the answer is held
  | 'unresolved-stations' // {count, stations, where}
  | 'mixed-selection' // {where, randomStations, randomPerHa, handPickedStations, handPickedPerHa, togetherPerHa}
  | 'transects-as-unit' // {transects, stations, wrongStandardErrorPerHa, standardErrorPerHa, factor}
  // a part cannot be known
  | 'stratum-without-area' // {strata}
  | 'lone-station' // {strata}
  | 'one-station' // {station}
  | 'too-few-in-subpopulation' // {name, stations}
  | 'hand-picked-only' // {where}
  | 'no-station' // {where}
  | 'no-searched-area' // {where}
  | 'timed-search' // {survey}
  | 'not-a-target' // {species, survey}
  | 'none-measured' // {species}
  | 'lengths-from-one-station' // {}
  | 'none-seen' // {species}
  // a station or transect that was left out of count and area
  | 'left-out-lost' // {station, transect, why}
  | 'left-out-station-lost' // {station}
  | 'left-out-not-looked-for' // {station, transect}
  | 'left-out-accepted' // {station, who, why}
  | 'left-out-later-swim' // {station, transect, swim}
  // cautions beside a number that stands
  | 'few-positive-stations' // {positive}
  | 'too-few-for-clumped' // {}
  | 'finite-population' // {strata, percent}
  | 'accepted' // {who, why, held}: an answer that was held and let through; `held` is the code of the hold
  | 'ratio-of-sums-used' // {strata}
  | 'zero-stratum-prior' // {strata}
  | 'zero-bound' // {scatteredPerHa, clumpedPerHa, k, source: 'archive' | 'default' | 'chosen', percent}
  | 'selection-not-recorded'; // {stations}
