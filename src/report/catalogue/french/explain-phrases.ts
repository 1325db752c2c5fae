/** La formule d’une densité en mots, les nombres mis dedans. */

import { counted } from '../../../survey/counted.ts';
import type { ExplainPhrases } from '../explain-phrases.ts';
import { spacedText as s } from './typography.ts';

export const explainPhrasesFr: ExplainPhrases = {
  mean: (stratum, how, perHa, spread) => s(`moyenne dans ${stratum} = ${how} = ${perHa} par ha ; ${spread}`),
  overStations: (sum, stations) => `${sum} / ${counted(stations, 'station')}`,
  oneStation: 'une seule station, pas d’écart type',
  deviation: (perHa) => `écart type entre stations ${perHa}`,
  byArea: (sum, perHa, area) => s(`par surface : ${sum} = ${perHa} par ha (poids : surfaces sur ${area})`),
  allStrata: 'toutes les strates',
  stock: (perHa, areaHa, animals) =>
    `stock = ${perHa} par ha × ${areaHa} ha = ${counted(animals, 'animal', 'animaux')}`,
  noError: 'pas d’erreur type',
  error: (terms, perHa) => `erreur type = √(${terms}) = ${perHa} par ha`,
  errorOfStock: (error, areaHa, animals) =>
    s(`${error} ; × ${areaHa} ha = ${counted(animals, 'animal', 'animaux')}`),
  freedom: (error, degrees) => s(`${error} ; degrés de liberté (Satterthwaite) ${degrees}`),
  inside: ({ stratum, members, stations, weight, share, mean }) =>
    s(
      `dans ${stratum} : ${counted(members, 'station')} sur ${stations}, donc ${weight} × ${members} / ${stations} = ${share} de la surface ; moyenne ${mean} par ha`,
    ),
  byThoseAreas: (terms, total, perHa) => s(`par ces surfaces : (${terms}) / ${total} = ${perHa} par ha`),
  stockInside: (perHa, areaHa, animals) =>
    `stock = ${perHa} par ha × ${areaHa} ha (estimés d’après les stations de la zone) = ${counted(animals, 'animal', 'animaux')}`,
  errorOfStockInside: (animals) =>
    s(
      `erreur type ${counted(animals, 'animal', 'animaux')} : la surface est elle-même estimée, et toutes les stations de ces strates y entrent`,
    ),
  errorInside: (terms, perHa) =>
    s(
      `erreur type = √(somme sur les strates de n × s² des contributions des stations) = √(${terms}) = ${perHa} par ha ; les stations du dehors contribuent 0 et y restent`,
    ),
  standsFor: s(
    'chaque animal mesuré représente les animaux comptés de sa bande (comptés / mesurés), et ceux-ci la surface de la strate (surface / stations × 10000 / m²)',
  ),
  meanLength: (lengths, animals, meanMm) =>
    `longueur moyenne = somme des animaux × longueur / somme des animaux = ${lengths} / ${animals} = ${meanMm} mm`,
  errorOfLength: (terms, errorMm) =>
    s(
      `erreur type = √(somme sur les strates de n × s² des (animaux × (longueur − moyenne)) des stations / tous les animaux) = √(${terms}) = ${errorMm} mm ; les stations sans animaux y restent`,
    ),
  gramsByPair: (pair, source) =>
    s(
      `grammes d’une station = somme, sur ses animaux, du poids de chaque longueur, d’après ${pair} (${source})`,
    ),
  forMeanWeights: (pair, factor) => `${pair}, × ${factor} pour les poids moyens`,
  gramsByMean: (means, source) => `grammes d’une station = animaux × ${means} (${source})`,
  or: ', ou ',
  sourceFromMemory: (source) => s(`${source} ; de mémoire, non vérifié`),
  converted: (ratio, from, to, source) => s(`puis × ${ratio}, de ${from} à ${to} (${source})`),
  zero: s(
    'rien n’a été vu : pas de dispersion ; l’intervalle va de zéro à la borne à laquelle toutes les stations auraient manqué les animaux une fois sur vingt (METHODS c5)',
  ),
  lognormal: s(
    'intervalle : log-normal, la valeur divisée et multipliée par exp(q × √ln(1 + CV²)), q du t aux degrés de liberté ci-dessus',
  ),
  clumped: s(
    'intervalle : comptages agrégés. Pour chaque strate, chaque densité est pondérée par la façon dont des animaux agrégés de cette densité donneraient ces comptages (binomiale négative et Poisson log-normale, en moyenne) ; les strates sont additionnées par surface (docs/methods/clumped-interval.md)',
  ),
  otherInterval: (method) => s(`intervalle : ${method}`),
  none: 'aucun',
  widened: 'élargi par ce qu’on ne sait pas du poids d’un animal (docs/methods/biomass.md)',
  prior: (k, spread, from) =>
    s(
      `ce qu’on croit de l’agrégation avant les comptages : k environ ${k}, dispersion du logarithme du taux environ ${spread} (${from})`,
    ),
  fromArchive: (strata) =>
    `tiré de ${counted(strata, 'strate antérieure', 'strates antérieures')} de cette espèce et de ce protocole`,
  fromHouse: 'l’a priori de la maison',
};
