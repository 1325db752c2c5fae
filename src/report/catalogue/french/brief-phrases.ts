/** La première page en lignes courtes et simples. */

import { counted } from '../../../survey/counted.ts';
import type { BriefPhrases } from '../brief-phrases.ts';
import { spacedText as s } from './typography.ts';

export const briefPhrasesFr: BriefPhrases = {
  howMuch: s('Combien ?'),
  upOrDown: s('En hausse ou en baisse ?'),
  healthy: s('En bon état ?'),
  take: s('Que peut-on prélever ?'),
  which: s(
    'Les espèces dont le changement est établi ou le plus grand, et celles dont la réponse attend ; les autres, et les nombres derrière ces lignes, suivent plus bas. Rien ici n’est une décision.',
  ),
  limits: (limits) => s(`Les campagnes ne se comparent que dans ces limites : ${limits}`),
  stock: (animals, areaHa) => `environ ${animals} sur ${areaHa} ha`,
  stockBetween: (animals, areaHa, sure, between) =>
    s(`environ ${animals} sur ${areaHa} ha (sûr à ${sure} : ${between})`),
  perHa: (perHa) => `${perHa} par ha`,
  perHaBetween: (perHa, sure, between) => s(`${perHa} par ha (sûr à ${sure} : ${between})`),
  noSpread: 'on ne peut pas dire de combien ce nombre s’écarte du vrai',
  seen: (animals, some, all) => s(`vus : ${animals}, à ${counted(some, 'station')} sur ${all}`),
  zones: (zones) => s(`par zone, par ha : ${zones}`),
  zone: (zone, perHa) => `${zone} ${perHa}`,
  zoneTold: (zone, told, numbers) => `dans la zone ${zone} ${told}, ${numbers}`,
  since: (told, from, numbers) => s(`${told}, depuis ${from} : ${numbers}`),
  openSince: (from, low, high) =>
    s(`indéterminé depuis ${from} : tout, de ${low} à ${high}, s’accorde avec les comptages`),
  openSinceTimes: (from, low, high) =>
    s(`indéterminé depuis ${from} : tout, de ${low} à ${high} autant, s’accorde avec les comptages`),
  atStations: (sentence, stations) => `${sentence}, à ces ${stations} stations seulement`,
  trend: (told, perYear, surveys) => s(`sur les ${surveys} campagnes : ${told}, ${perYear} par an`),
  trendOpen: (surveys) => `pas de tendance établie non plus sur les ${surveys} campagnes`,
  trendOpenToo: (surveys) => `sur les ${surveys} campagnes, aucune tendance n’est établie`,
  sides: {
    below: 'au-dessous',
    'likely below': 'probablement au-dessous',
    'cannot tell': 'on ne peut pas dire si c’est au-dessous ou au-dessus',
    'likely above': 'probablement au-dessus',
    above: 'au-dessus',
  },
  beside: (side, perHa, source) => `${side} de la densité publiée de ${perHa} par ha (${source})`,
  besideOwn: (side, perHa, source) => `${side} de votre propre densité de ${perHa} par ha (${source})`,
  boundBelow: (bound) => `rien de relevé, moins de ${bound} par ha, donc au-dessous`,
  noneToCompare: 'aucune densité publiée comptée de la même façon n’est connue ici',
  notSetBeside:
    'pas mise à côté d’une densité publiée, car on ne sait pas de combien celle-ci s’écarte de la vraie',
  mature: (share, between, sizeMm) => `${share} (${between}) ont la taille mature, ${sizeMm} mm ou plus`,
  matureRange: (low, high, sizesMm) =>
    `de ${low} à ${high} ont la taille mature, selon la taille publiée retenue (${sizesMm} mm)`,
  or: ' ou ',
  closed: (limitPerHa, chance) =>
    s(
      `rien, d’après la règle choisie : la probabilité d’être au-dessous de ${limitPerHa} par ha est de ${chance}`,
    ),
  closedNoneSeen: s('rien, d’après la règle choisie : aucun animal n’a été relevé'),
  open: (limitPerHa, chance) =>
    s(
      `pêche ouverte d’après la règle choisie (probabilité d’être au-dessous de ${limitPerHa} par ha : ${chance})`,
    ),
  noRate: 'aucun taux n’a été donné, et aucun n’est supposé',
  options: (options) => s(`options pour le gestionnaire : ${options}`),
};
