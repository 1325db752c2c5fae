/** Comment un changement et une tendance se disent, dans une phrase et dans un tableau. */

import { counted } from '../../../survey/counted.ts';
import type { ChangePhrases } from '../change-phrases.ts';
import { spacedText as s } from './typography.ts';

export const changePhrasesFr: ChangePhrases = {
  told: {
    lower: 'en baisse',
    higher: 'en hausse',
    'probably lower': 'probablement en baisse',
    'probably higher': 'probablement en hausse',
    'cannot tell': 'indéterminé',
  },
  notProven: (told, share) => `${told}, non établi à ${share}`,
  noneBefore: (low) => s(`aucun animal vu avant ; au moins ${low} autant`),
  noneBeforeUntold: 'rien de relevé avant, ce qui ne prouve pas une hausse',
  noneLaterUntold: 'rien de relevé ensuite, ce qui ne prouve pas une baisse',
  noneLater: (most) => s(`aucun animal vu ensuite ; au plus ${most} du niveau antérieur`),
  atLeast: (ratio, low) => `${ratio} (au moins ${low})`,
  range: (value, low, high) => `${value} (${low} à ${high})`,
  times: (n) => `${n} fois`,
  overTenThousand: 'plus de 10\u202f000 fois',
  hardlyAny: 'de telles campagnes révéleraient à peine la perte de tous les animaux',
  tellAFall: (to) => `de telles campagnes révèlent, 8 fois sur 10, une baisse à ${to} du niveau antérieur`,
  halvingEach: (could, stations) =>
    s(
      `${could} ; révéler une baisse de moitié demanderait deux campagnes d’environ ${stations} stations chacune`,
    ),
  halvingToo: (could) => `${could}, donc aussi une baisse de moitié`,
  halvingMore: (could, stations) =>
    s(
      `${could} ; environ ${counted(stations, 'station')} de plus ${stations === '1' ? 'révélerait' : 'révéleraient'} une baisse de moitié`,
    ),
  // sur toutes les campagnes
  noTrend: (species) => s(`${species} : aucune tendance ne peut être donnée`),
  trendTold: {
    falling: 'en baisse',
    rising: 'en hausse',
    'cannot tell': 'impossible de dire si c’est en baisse ou en hausse',
  },
  trend: ({ species, told, perYear, share, low, high, surveys, strata }) =>
    s(
      `${species} : ${told}, ${perYear} par an (intervalle à ${share} : ${low} à ${high}), sur ${surveys} campagnes de ${strata}`,
    ),
  trendShort: ({ species, told, perYear, share, low, high, surveys }) =>
    s(
      `${species} : ${told}, ${perYear} par an (intervalle à ${share} : ${low} à ${high}), sur ${surveys} campagnes`,
    ),
  overThousandPercent: 'plus de +1\u202f000\u00a0%',
  // sur la page
  animals: (n, one) => `${n} ${one || n === '0' ? 'animal' : 'animaux'}`,
  stations: (n, one) => `${n} ${one || n === '0' ? 'station' : 'stations'}`,
  colon: (head, rest) => s(`${head} : ${rest}`),
  semicolon: s(' ; '),
  inZone: (zone) => `zone ${zone}`,
  toldWith: (told, numbers) => `${told}, ${numbers}`,
  perHaSeen: (from, to, n) =>
    `${from} à ${to} par ha (${n.animals} à ${n.stations}, puis ${n.animalsLater} à ${n.stationsLater})`,
  seen: (n) => `${n.animals} à ${n.stations} avant, ${n.animalsLater} à ${n.stationsLater} maintenant`,
  zone: (zone, perHa, seen) => `${zone} ${perHa} par ha (${seen.animals} à ${seen.stations})`,
  zoneBetween: (zone, perHa, seen) =>
    s(`${zone} ${perHa} par ha (${seen.between} ; ${seen.animals} à ${seen.stations})`),
  sides: (head, sides) =>
    s(`${head}. ${sides.map(([side, species]) => `${upperFirst(side)} : ${species}`).join('. ')}.`),
  heads: {
    perHa: 'Par ha',
    told: 'Conclusion',
    change: 'Changement',
    halving: 'Stations pour révéler une baisse de moitié',
    perYear: 'Par an',
    interval: (share) => `Intervalle à ${share}`,
    onTheLine: 'Campagnes sur la droite',
  },
  caption: (share) => `Changement, avec son intervalle à ${share}`,
  wholeGroup: 'Partie commune aux deux campagnes',
  zoneGroup: (zone) => `Zone ${zone}`,
  commonWeights: s(
    'Les densités à côté d’un changement portent sur la partie commune aux deux campagnes, chaque strate ou zone ayant le même poids dans les deux ; elles peuvent donc différer de celles de la campagne entière.',
  ),
  byLuck: (compared, expected) =>
    s(
      `Il y a ici ${compared} comparaisons. Même si rien n’avait changé nulle part, environ ${expected} pourraient être dites en baisse ou en hausse par pur hasard, et davantage « probablement » : un changement seul parmi beaucoup d’indéterminés est un indice faible.`,
    ),
  brokenBefore: (survey, why) => s(`Aucun trait ne mène à ${survey} : ${why}.`),
  theTrend: 'La tendance',
  trendCaption: 'Une droite à travers les campagnes, en pourcentage par an',
  trendOver: (surveys, strata) =>
    s(
      `Sur ${surveys} campagnes, dans les strates que toutes ont visitées : ${strata}. Une droite à travers les logarithmes des densités, chaque campagne pondérée par sa propre dispersion.`,
    ),
  someOf: (some, all) => `${some} sur ${all}`,
  falling: 'en baisse',
  to: ' à ',
  rising: 'en hausse',
  trendCannotTell: 'indéterminé',
  aboutEach: (stations) => `environ ${stations} chacune`,
  theseWouldDo: 'celles-ci suffisent',
  aboutMore: (stations) => `environ ${stations} de plus`,
};

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
