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
  | 'local-mean-used' // {usualPerHa, localPerHa, strata}
  | 'local-mean-not-possible' // {why}
  | 'too-few-for-clumped' // {}
  | 'finite-population' // {strata, percent}
  | 'accepted' // {who, why, held}: an answer that was held and let through; `held` is the code of the hold
  | 'ratio-of-sums-used' // {strata}
  | 'zero-stratum-prior' // {strata}
  | 'zero-bound' // {scatteredPerHa, clumpedPerHa, k, source: 'archive' | 'default' | 'chosen', percent}
  // a value from outside the survey, and weights made with it (src/report/catalogue/reasons-values.ts)
  | 'value-own' // {source}
  | 'value-read' // {source}
  | 'value-memory' // {source}
  | 'value-derived' // {source}
  | 'no-weights' // {species, state}
  | 'no-lengths-for-pair' // {species}
  | 'no-conversion' // {species, from, to}
  | 'processed-pair' // {state}
  | 'only-from-memory' // {species}
  | 'pair-implausible' // {lengthMm, weightG, lightestG, heaviestG}
  | 'weight-of-one' // {lengthMm, weightG}
  | 'outside-fitted-range' // {percent, fromMm, toMm}
  | 'fitted-range-unknown' // {}
  | 'lengths-borrowed' // {animals, percent}
  | 'no-correction' // {}
  | 'parameters-unknown' // {}
  | 'mean-weight-used' // {}
  | 'mean-weight-of-all-sizes' // {limitMm}
  | 'mean-weights-differ' // {lowG, highG}
  | 'mean-weight-no-error' // {}
  | 'few-weighed' // {animals}
  | 'no-own-weights' // {species}
  | 'too-few-weighed' // {species, animals, state, least}
  | 'weights-without-state' // {animals}
  | 'weighings-impossible' // {animals, lengthMm, weightG}
  | 'conversion-used' // {from, to, percent, source}
  | 'conversion-bounds' // {from, to, lowPercent, highPercent, source}
  | 'other-measure' // {animals, measure}
  // a density set against another one, and what may be taken (src/report/catalogue/reasons-advice.ts)
  | 'survey-methods-mixed' // {methods}
  | 'reference-method-unknown' // {}
  | 'reference-other-method' // {reference, survey}
  | 'reference-other-width' // {referenceM, surveyM}
  | 'no-spread' // {where}
  | 'no-size-limit' // {species}
  | 'no-mean-weight' // {species}
  | 'no-legal-animals' // {species, limitMm}
  | 'area-unknown' // {where}
  // two surveys set against each other (src/report/catalogue/reasons-change.ts)
  | 'change-not-on-record' // {aspect}
  | 'change-other-method' // {from, to}
  | 'change-other-width' // {fromM, toM}
  | 'change-other-area' // {fromM2, toM2}
  | 'change-other-depth' // {fromM, toM}
  | 'change-other-season' // {from, to}
  | 'change-other-mode' // {from, to}
  | 'change-other-observers' // {from, to}
  | 'change-strata-dropped' // {dropped, common}
  | 'change-species-dropped' // {species}
  | 'change-hand-picked' // {stations}
  | 'change-hand-picked-left-out' // {stations}
  | 'change-place-moved' // {stations, distanceM}
  | 'change-no-common-stratum' // {from, to}
  | 'change-no-common-station' // {}
  | 'change-none-seen' // {species}
  | 'change-lone-station' // {strata}
  | 'change-blank-left-out' // {stations}
  | 'change-too-few-for-clumped' // {}
  | 'change-not-a-target' // {species, survey}
  | 'trend-hand-picked' // {}
  | 'trend-too-few' // {species, surveys}
  | 'trend-none-seen-in' // {surveys}
  | 'trend-no-spread-in' // {surveys}
  | 'trend-uneven' // {percent}
  // numbers of species, and the divers (src/report/catalogue/richness-words.ts, observers-words.ts)
  | 'richness-unequal-stations' // {small, smallM2, large, largeM2}
  | 'richness-small-stations' // {stations}
  | 'richness-species-dropped' // {species}
  | 'richness-hand-picked' // {stations}
  | 'richness-little-effort' // {small, stations, animals, large, percent}
  | 'observers-too-few-pairs' // {pairs}
  | 'observers-neither-saw' // {belts}
  | 'observers-no-person' // {}
  | 'observers-few-animals' // {}
  | 'observers-few-belts' // {}
  | 'observers-one-in-stratum' // {observer, stratum, stations}
  | 'observers-holes' // {empty, cells}
  | 'observers-unnamed' // {stations}
  | 'observers-swim-other-area' // {belts, count}
  | 'observers-swim-not-searched' // {belts, count}
  | 'observers-swim-alone' // {belts, count}
  | 'selection-not-recorded'; // {stations}
