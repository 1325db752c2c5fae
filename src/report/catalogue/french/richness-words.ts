/** Pourquoi des nombres d’espèces ne se comparent pas, ou en partie seulement. */

import type { richnessWords } from '../richness-words.ts';

export const richnessWordsFr = {
  'richness-unequal-stations':
    'Une station de {small} a prospecté {smallM2} m², une de {large} {largeM2} m² : les grandes stations montrent plus d’espèces ; les stations ne sont donc pas un effort égal',
  'richness-small-stations':
    'Moins des deux tiers de la surface habituelle de leur partie ont été prospectés à {stations} des stations ; chacune compte comme entière, et sa partie peut paraître un peu plus pauvre',
  'richness-species-dropped':
    'Pas cherchées sur chaque bande, et laissées hors de la comparaison : {species}',
  'richness-little-effort':
    'L’effort commun est faible : {animals} {animals:animal|animaux} (le moins de stations : {stations}), autant que pour {small}, et {percent} % des animaux de {large} ; si peu montrent à peine les espèces rares, et une différence peut échapper',
  'richness-hand-picked':
    'Choisies à la main : {stations} des stations ; leurs espèces sont celles des lieux visités et ne parlent pour aucun autre lieu',
} as const satisfies Record<keyof typeof richnessWords, string>;
