/** Comment un plan se dit : tirage, choix, remplacement, caps, répartition. */

import type { PlanPhrases } from '../plan-phrases.ts';
import { spacedText } from './typography.ts';

const s = spacedText;

export const planPhrasesFr: PlanPhrases = {
  methods: {
    acceptance: 'positions au hasard, bien réparties (échantillonnage équilibré par acceptation)',
    pivotal: 'positions au hasard, bien réparties (méthode du pivot local)',
  },
  selections: { random: 'au hasard', fixed: 'fixe', 'hand-picked': 'choisie à la main' },
  spare: 'remplaçante',
  dropped: 'abandonnée',
  inPlaceOf: (code) => `à la place de ${code}`,
  allocation: (kept) =>
    kept
      .replace(
        ' stations divided by area and spread of ',
        ' stations réparties selon la surface et la dispersion de ',
      )
      .replace(' stations divided by area', ' stations réparties selon la surface')
      .replace(' de all its species in ', ' de toutes ses espèces dans ')
      .replace(/( dispersion de .*) in (.*, at least )/, '$1 dans $2')
      .replace(/, at least (\d+) in each stratum$/, ', au moins $1 par strate'),
  model: (model, valid) => `déclinaison d’après ${model}${valid}`,
  valid: (fromYear, toYear) => ` (vaut de ${fromYear} à ${toYear})`,
  bearings: (first, last) => `${first} à ${last}`,
  spread: {
    head: s('Répartition sur le fond (0 : chaque station représente autant de fond que les autres) :'),
    balance: (stratum, drawn, simple, share, draws) =>
      s(
        `${stratum} : ${drawn}, contre ${simple} en moyenne au hasard simple ; parmi ${draws} tirages simples, ${share} sont aussi bien répartis`,
      ),
    apart: (metres, passed) => s(`Au moins ${metres} m entre stations : ${passed}.`),
    nonePassed: 'aucune position n’a été écartée',
    onePassed: '1 position a été écartée, trop près d’une autre',
    passed: (n) => `${n} positions ont été écartées, trop près d’une autre`,
    passedMore: (n) => `${n} positions ou plus ont été écartées, trop près d’une autre`,
    spacingHead: s('Avec cet espacement, la chance d’un endroit d’être choisi :'),
    spacing: (stratum, low, high, luck, redraws) =>
      s(
        `${stratum} : de ${low} à ${high} fois ce qu’elle serait sans lui ; ce qui est dans 1 ± ${luck} peut être dû au hasard des ${redraws} nouveaux tirages`,
      ),
    failed: (n) => ` (dont ${n} où la place a manqué)`,
    nearGiven: s(
      'Près d’une station fixe ou choisie à la main, cette chance tombe à 0 : aucune nouvelle n’y est tirée.',
    ),
  },
};
