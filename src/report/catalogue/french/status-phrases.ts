/** Comment une densité se compare à une densité publiée, et une longueur à une taille. */

import type { StatusPhrases } from '../status-phrases.ts';
import { spacedText as s } from './typography.ts';

export const statusPhrasesFr: StatusPhrases = {
  classes: {
    below: 'au-dessous de',
    'likely below': 'probablement au-dessous de',
    'cannot tell': 'on ne peut pas dire si elle est au-dessous ou au-dessus de',
    'likely above': 'probablement au-dessus de',
    above: 'au-dessus de',
  },
  notCompared: (against, reason) => s(`pas comparée à ${against} : ${reason}`),
  notComparedWith: (against, reason) => `Pas comparée à ${against}. ${reason}`,
  compared: (told, against, chance) => s(`${told} ${against} : chance d’être au-dessous ${chance}`),
  fromDesign: 'par le plan de sondage',
  fromClumped: 'comptages en groupes',
  besideDesign: (from, chance) => s(`${from} ; par le seul plan de sondage ${chance}`),
  boundBelow: (bound, against) => `non notée, moins de ${bound} par ha, donc au-dessous de ${against}`,
  boundOpen: (bound, against) =>
    s(
      `non notée, moins de ${bound} par ha : trop peu a été fouillé pour dire si c’est au-dessous de ${against}`,
    ),
  ownDensity: 'votre propre densité',
  publishedDensity: 'la densité publiée',
  reference: (kind, perHa, told) => `${kind} ${perHa} par ha (${told})`,
  andOthers: (first) => `${first} et autres`,
  memory: 'de mémoire, non vérifiée',
  derived: 'calculée à partir de nombres publiés',
  methods: {
    belts: 'bandes',
    quadrats: 'quadrats',
    'timed search': 'recherche chronométrée',
    'towed observer': 'observateur remorqué',
    'night search': 'recherche de nuit',
    'deep dive': 'plongée profonde',
    'reef-front search': 'recherche sur le front du récif',
    'not stated': 'non dite',
  },
  almostCertain: 'plus de 0,99',
  almostImpossible: 'moins de 0,01',
  mark: (what, limitMm, told) => `${what}, ${limitMm} mm (${told})`,
  shareUnknown: (mark) => s(`Part qui atteint la ${mark} : inconnue`),
  shareUnknownAs: (mark, reason) => s(`Part qui atteint la ${mark} : inconnue ; ${reason}`),
  noInterval: 'sans intervalle',
  share: (share, between, mark) => `${share} (${between}) atteignent la ${mark}`,
  atMaturity: 'taille de première maturité',
  atLimit: 'taille limite du carnet',
  measured: (share, some, all) => s(`${share} ; ${some} animaux mesurés sur ${all}`),
};
