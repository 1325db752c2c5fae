/** Pourquoi une réponse, ou une partie, ne peut être donnée, et ce qui en a été laissé de côté. */

import type { ReasonCode } from '../../../survey/reason-codes.ts';
import { observersWordsFr } from './observers-words.ts';
import { reasonsAdviceFr } from './reasons-advice.ts';
import { reasonsChangeFr } from './reasons-change.ts';
import { holdsOfWeightsFr, reasonsValuesFr } from './reasons-values.ts';
import { richnessWordsFr } from './richness-words.ts';

export const reasonsFr: Readonly<Record<ReasonCode, string>> = {
  ...reasonsValuesFr,
  ...reasonsAdviceFr,
  ...reasonsChangeFr,
  ...richnessWordsFr,
  ...observersWordsFr,
  'unresolved-stations':
    'En suspens jusqu’à ce qu’on sache ce qui a été prospecté à la station {stations} (en attente dans {where} : {count}) ; un blanc n’est pas un zéro',
  'mixed-selection':
    'En suspens : dans {where}, stations tirées au hasard et stations choisies à la main sont mêlées. Les premières ({randomStations}) donnent {randomPerHa} par ha, les secondes ({handPickedStations}) {handPickedPerHa} ; ensemble elles donneraient {togetherPerHa}',
  'transects-as-unit':
    'En suspens : prendre {transects} bandes pour des stations indépendantes (il y en a {stations}) donnerait une erreur type de {wrongStandardErrorPerHa} par ha, là où {standardErrorPerHa} est juste : {factor} fois trop sûr',
  'stratum-without-area':
    'La surface de {strata} n’est pas connue ; les strates ne peuvent donc pas être pondérées',
  'lone-station':
    'Une seule station dans {strata} : une moyenne, mais sans dispersion ; visitez-en une autre, ou prenez la strate avec une autre d’habitat semblable (density --merge)',
  'one-station': 'Une seule station ({station}) : une densité à cet endroit, mais sans dispersion',
  'too-few-in-subpopulation': 'Trop peu de stations ({stations}) sont dans {name} pour une dispersion',
  'hand-picked-only':
    'Les stations de {where} ont été choisies à la main : la moyenne est celle des stations visitées et ne parle pour aucun autre lieu',
  'no-station': 'Aucune station n’a été visitée dans {where}',
  'no-searched-area': 'Aucune surface prospectée n’est écrite dans {where}',
  'timed-search':
    '{survey} est une recherche chronométrée : des animaux par heure, qui ne sont jamais mêlés aux densités',
  'not-a-target': '{species} n’a pas été cherchée dans {survey}',
  'none-measured': 'Aucun animal de {species} n’a été mesuré',
  'lengths-from-one-station':
    'Toutes les longueurs viennent d’une seule station : des tailles à cet endroit, mais sans dispersion entre stations',
  'none-seen': 'Aucun animal de {species} n’a été observé',
  'left-out-lost':
    'Station {station}, bande {transect} : perdue ou pas faite[ ({why})] ; ni dans le nombre ni dans la surface',
  'left-out-station-lost': 'Station {station} : toutes les bandes perdues ou pas faites',
  'left-out-not-looked-for': 'Station {station}[, bande {transect}] : cette espèce n’y a pas été cherchée',
  'left-out-accepted': 'Station {station} : laissée de côté sciemment par {who} : {why}',
  'left-out-later-swim':
    'Station {station}, bande {transect} : le passage {swim} répète la même bande, pour comparer des plongeurs, et n’est pas compté deux fois',
  'local-mean-used':
    'L’erreur type ({localPerHa} par ha ; par la formule habituelle {usualPerHa}) compare chaque station à ses voisines : juste seulement pour des stations tirées bien réparties sur leur fond[ ; formule habituelle dans {strata}]',
  'local-mean-not-possible': 'L’erreur type habituelle reste, non celle de la moyenne locale : {why}',
  'few-positive-stations':
    'Observée à moins de 10 stations : l’incertitude réelle peut être plus grande que cet intervalle',
  'too-few-for-clumped':
    'Moins de 3 de ses stations sont dans l’une des strates, trop peu pour l’intervalle des comptages agrégés : l’intervalle log-normal est à sa place, et l’incertitude réelle peut être plus grande',
  'finite-population':
    'Les stations couvrent {percent} % de {strata} : la dispersion montrée est plus large que nécessaire (--fpc le corrige)',
  accepted: 'Laissé passer par {who}[ malgré {held}], avec pour raison : {why}',
  'ratio-of-sums-used':
    'Dans {strata}, la surface prospectée est restée bien moindre que prévu à certaines stations ; animaux et surfaces ont donc été additionnés sur les stations (rapport des sommes)',
  'zero-stratum-prior':
    'Rien n’a été observé dans {strata} ; cela ajoute un peu à la borne supérieure de l’intervalle, et non rien',
  'zero-bound':
    'Non observée ; avec {percent} % de certitude, moins de {scatteredPerHa} par ha si les animaux sont dispersés, moins de {clumpedPerHa} s’ils sont agrégés (k\u00a0{k}, {source})',
  'selection-not-recorded':
    'Comment {stations} des stations ont été choisies n’est pas écrit ; elles sont traitées comme tirées au hasard',
};

/** Pourquoi une réponse était retenue, comme cela se lit dans la phrase `accepted`. */
export const holdsInWordsFr: Readonly<Partial<Record<string, string>>> = {
  ...holdsOfWeightsFr,
  'unresolved-stations': 'des stations qui attendent une réponse',
  'mixed-selection': 'le mélange de stations tirées au hasard et choisies à la main',
  'transects-as-unit': 'des bandes prises pour des stations indépendantes',
} satisfies Partial<Record<ReasonCode, string>>;
