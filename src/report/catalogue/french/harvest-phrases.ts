/** Comment une prise se calcule, pas à pas, et quand rien ne devrait être pris. */

import { counted } from '../../../survey/counted.ts';
import type { HarvestPhrases } from '../harvest-phrases.ts';
import { spacedText as s } from './typography.ts';

export const harvestPhrasesFr: HarvestPhrases = {
  rule: (closed, limitPerHa, chance, risk) =>
    s(
      `D’après la règle choisie : pêche ${closed ? 'fermée' : 'ouverte'}. La probabilité que la densité soit inférieure à la limite de ${limitPerHa} par ha est de ${chance}, ${closed ? 'plus' : 'pas plus'} que le risque choisi de ${risk}.`,
    ),
  ruleNoneSeen: (limitPerHa, bound) =>
    s(
      `D’après la règle choisie : pêche fermée. Rien n’a été relevé (moins de ${bound} par ha) : rien ne plaide pour une densité au-dessus de la limite de ${limitPerHa} par ha.`,
    ),
  ruleUntold: (limitPerHa, source) =>
    s(
      `On ne peut pas dire si la règle ouvre ou ferme : la probabilité d’être au-dessous de la limite de ${limitPerHa} par ha (${source}) n’est pas connue ici. Inconnu ne veut pas dire ouvert.`,
    ),
  limitNoneSeen: (perHa, source, bound) =>
    s(
      `densité limite ${perHa} par ha (${source}) ; rien n’a été relevé, moins de ${bound} par ha : il n’y a pas de probabilité à calculer, et la règle ferme`,
    ),
  limitReference: (perHa, source, chance, from) =>
    s(`densité limite ${perHa} par ha (${source}) ; probabilité d’être au-dessous : ${chance} (${from})`),
  fromDesign: 'log-normal, par le plan de sondage',
  fromClumped: 'comptages agrégés',
  besideClumped: (from, chance) => s(`${from} ; par les comptages agrégés ${chance}`),
  besideDesign: (from, chance) => `${from}, par le seul plan de sondage ${chance}`,
  closedWhere: (comparison, closed) =>
    s(
      `fermée quand cette probabilité dépasse le risque choisi : ${comparison}, donc ${closed ? 'fermée' : 'ouverte'}`,
    ),
  stock: (perHa, areaHa, animals, origin) =>
    `stock = densité × surface = ${perHa} par ha × ${areaHa} ha = ${counted(animals, 'animal', 'animaux')} (${origin})`,
  typed: 'saisi',
  everySize: 'toute taille peut être prise',
  typedFrom: (source) => s(`saisi ; ${source}`),
  countedAt: (animals, some, all) =>
    `${counted(animals, 'animal', 'animaux')} à ${counted(some, 'station')} sur ${all}`,
  lower: (share, how, perHa, animals) =>
    s(
      `limite inférieure du stock, unilatérale à ${share}, ${how} : ${perHa} par ha, en tout ${counted(animals, 'animal', 'animaux')}`,
    ),
  otherLower: (how, animals, why) => s(`à côté, ${how} : ${counted(animals, 'animal', 'animaux')} (${why})`),
  smallerUsed: 'la plus petite est retenue',
  notUsed: 'non retenue, comme demandé',
  clumped: 'comptages agrégés',
  lognormal: (formula, quantile, of) => `log-normal ${formula}, ${quantile} de la loi ${of}`,
  normal: 'normale',
  tWith: (degreesOfFreedom) => `t à ${degreesOfFreedom} degrés de liberté`,
  legal: (lower, share, animals) =>
    `animaux de taille légale = limite inférieure × part de taille légale = ${lower} × ${share} = ${counted(animals, 'animal', 'animaux')}`,
  joint: (formula, animals) =>
    s(
      `à côté, avec aussi l’incertitude de la part (CV commun ${formula} ; log-normal) : ${counted(animals, 'animal', 'animaux')}`,
    ),
  share: (share, limitMm, source, measured) => s(`${share} (${limitMm} mm ou plus, ${source} ; ${measured})`),
  measured: (n) => s(`mesurés : ${n}`),
  measuredBetween: (n, between) => s(`mesurés : ${n}, ${between} %`),
  meanWeight: (kg, state, source) =>
    s(`poids moyen d’un animal de taille légale : ${kg} kg, ${state} (${source})`),
  states: { live: 'poids vif', gutted: 'poids éviscéré', salted: 'poids salé', dried: 'poids sec' },
  catch: (percent, product, animals) =>
    `prise à ${percent} = ${product} = ${counted(animals, 'animal', 'animaux')}`,
  catchWeight: (animals, kg, total) => s(`${animals} ; × ${kg} kg = ${total} kg`),
  option: (animals, percent) => `${counted(animals, 'animal', 'animaux')} par an à ${percent}`,
  heads: {
    rate: 'Taux par an',
    tonnes: 'Tonnes',
    ofStock: 'Du stock entier',
    source: 'Source du taux',
  },
  caption: 'Prise par an, depuis la limite inférieure du stock',
  paper: {
    ruleHead: 'La règle de fermeture',
    rule: (limitPerHa, source, risk) =>
      `Rien n’est prélevé d’une espèce quand la probabilité que sa densité soit inférieure à ${limitPerHa} par ha (${source}) dépasse le risque choisi de ${risk}.`,
    ruleCaption: 'Espèce par espèce',
    ruleHeads: {
      found: 'Animaux (stations)',
      perHa: 'Par ha',
      chance: 'Probabilité d’être au-dessous',
      design: 'Par le seul plan de sondage',
      told: 'Selon la règle',
    },
    seen: (animals, some, all) => `${animals} (${some} sur ${all})`,
    noneSeen: 'rien de relevé',
    closed: 'fermée',
    open: 'ouverte',
    catchHead: 'Ce que donneraient les taux',
    catchExplained: s(
      'Une prise est un taux multiplié par les animaux de taille légale dans la limite inférieure du stock. Quand la règle dit « fermée », la prise est 0, et les nombres indiquent ce qu’elle serait si la pêche était ouverte. Le calcul est sous « D’où vient ce nombre ? ».',
    ),
    closedGroup: (species) => s(`${species} : fermée selon la règle, donc 0 ; si elle était ouverte`),
    openGroup: (species) => s(`${species} : ouverte selon la règle`),
    without: 'Sans prise, et pourquoi',
    toRead: 'À lire avec les prises',
  },
  allZones: (zones) =>
    s(
      `Le stock derrière ces prises est celui de toutes les zones ensemble (${zones}), zones fermées comprises : ce qui vit dans une zone fermée ne peut pas être prélevé au dehors. « slateline harvest --closed-zone » en laisse une de côté.`,
    ),
  sampledOnly: s(
    'Le stock est celui des strates visitées seulement ; rien n’est connu de l’habitat, de la profondeur ou du fond qui n’a pas été visité.',
  ),
};
