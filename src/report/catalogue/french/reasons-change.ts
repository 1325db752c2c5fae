/** Pourquoi deux campagnes ne se comparent pas, ou en partie seulement, et ce qui accompagne un changement. */

import type { reasonsChange } from '../reasons-change.ts';

export const reasonsChangeFr = {
  'change-not-on-record':
    '{aspect} : pas écrit dans les deux campagnes ; personne ne peut dire si c’était pareil',
  'change-other-method':
    'En suspens : les animaux ont été comptés par {from} dans la première campagne et par {to} dans la seconde ; ce que l’une trouve ne dit rien de ce que l’autre aurait trouvé',
  'change-other-width':
    'Les bandes avaient {fromM} m de large, puis {toM} m : les bandes étroites trouvent plus de petits animaux par hectare ; une part du changement peut venir de la bande',
  'change-other-area':
    'Une station faisait {fromM2} m², puis {toM2} m² : les densités se comparent, mais non la fréquence des rencontres d’une espèce',
  'change-other-depth': 'La profondeur médiane était de {fromM} m, puis de {toM} m',
  'change-other-season':
    'Les saisons diffèrent ({from} ; puis {to}) : des animaux qui s’enfouissent ou se rassemblent selon la saison changent de densité sans que le stock change',
  'change-other-mode': 'Le travail a été fait par {from}, puis par {to}',
  'change-other-observers':
    'Personne n’a noté dans les deux campagnes ({from} ; puis {to}) : un changement peut venir des personnes (observers dit à quel point deux plongeurs comptent pareil)',
  'change-strata-dropped':
    'Laissé de côté, parce qu’une seule des campagnes y a travaillé : {dropped} ; comparé : {common}',
  'change-species-dropped': 'Cherchées dans une seule des campagnes, et non comparées : {species}',
  'change-hand-picked':
    '{stations} {stations:station a été choisie|stations ont été choisies} à la main : {stations:elle dit un changement à cette station et ne parle|elles disent un changement à ces stations et ne parlent} pour aucun autre lieu',
  'change-hand-picked-left-out':
    '{stations} {stations:station choisie à la main n’est|stations choisies à la main ne sont} pas dans la comparaison : {stations:elle ne parle|elles ne parlent} pour aucun autre lieu',
  'change-place-moved':
    'Les stations {stations} portent le même code dans les deux campagnes mais sont à plus de {distanceM} m : elles sont prises pour des lieux différents',
  'change-no-common-stratum':
    'En suspens : aucune strate n’a été visitée dans les deux campagnes[ ({from} ; puis {to})] ; il n’y a donc pas de partie commune à comparer',
  'change-no-common-station':
    'Les stations ont été choisies à la main, et aucune n’a été visitée dans les deux campagnes : il n’y a pas de changement à dire',
  'change-none-seen':
    'Aucun animal de {species} n’a été observé dans l’une ni l’autre campagne : on ne peut rien dire d’un changement',
  'change-lone-station':
    'Une seule station dans {strata}, dans l’une des campagnes : deux densités, mais sans dispersion ; on ne peut donc rien dire d’un changement ici ; les strates ensemble le peuvent peut-être, ou plus de stations',
  'change-too-few-for-clumped':
    'Moins de 3 stations sont dans l’une des strates ici, trop peu pour l’intervalle des comptages agrégés : celui du rapport des logarithmes est à sa place ; il annonce trop souvent un changement quand les animaux sont agrégés, et aucun changement n’est donc dit prouvé',
  'change-blank-left-out':
    'Laissées de côté nommément, parce que personne n’a dit si elles avaient été parcourues : {stations} ; si elles l’ont été sans rien trouver, les densités d’ici sont trop hautes',
  'change-not-a-target': '{species} n’a pas été cherchée dans {survey} ; on ne peut pas la comparer',
  'trend-hand-picked':
    'Les stations d’une campagne ont été choisies à la main, et leur tendance ne parlerait pour aucun autre lieu : comparez deux campagnes aux stations visitées dans les deux avec change',
  'trend-too-few':
    'Une tendance de {species} demande des campagnes à trois dates différentes avec des animaux, une dispersion et une partie commune, et il y en a {surveys} : comparez-en deux avec change',
  'trend-none-seen-in':
    'Rien n’a été observé dans {surveys} : un zéro n’a pas de logarithme, la droite est donc celle des autres campagnes seules, et un stock qui a disparu ou qui est revenu n’y est pas',
  'trend-no-spread-in': 'Aucune dispersion ne peut être donnée pour {surveys} ; la droite ne les prend pas',
  'trend-uneven':
    'Les campagnes s’écartent de la droite plus que leurs propres erreurs ne le permettent (p = {percent} %) : le changement n’a pas été régulier',
} as const satisfies Record<keyof typeof reasonsChange, string>;
