/** Comment les poids se disent : une paire, un poids moyen, leur origine, un tableau de biomasse. */

import { counted } from '../../../survey/counted.ts';
import type { WeightPhrases } from '../weight-phrases.ts';
import { spacedText as s } from './typography.ts';

export const weightPhrasesFr: WeightPhrases = {
  states: { live: 'poids vif', gutted: 'poids éviscéré', salted: 'poids salé', dried: 'poids sec' },
  measures: {
    'body relaxed': 'corps détendu',
    'body contracted': 'corps contracté',
    'basal diameter': 'diamètre de la base',
    'shell length': 'longueur de la coquille',
  },
  curve: (formula, lengthUnit, weightUnit, state) =>
    `${formula}, L en ${lengthUnit}, W en ${weightUnit} (${state})`,
  rangeNotTold: 'longueurs dont elle est tirée non dites',
  range: (fromMm, toMm) => `d’animaux de ${fromMm} à ${toMm} mm`,
  spread: (spread) => `dispersion ${spread} en ln W`,
  animals: (n) => counted(n, 'animal', 'animaux'),
  mean: (grams, state) => `${grams} g (${state})`,
  meanError: (grams) => `erreur type ${grams} g`,
  meanLength: (mm) => `longueur moyenne ${mm} mm`,
  between: s(' ; '),
  or: ', ou ',
  source: (source) =>
    source.replace(/^(\d+) animals weighed in this book$/, '$1 animaux pesés dans ce carnet'),
  memory: (source) => s(`de mémoire, non vérifié : ${source}`),
  fit: (explained, factor, slope) =>
    s(
      `la droite explique ${explained} de la dispersion de ln W ; les poids moyens sont ${factor} fois la courbe ; pente de la droite des moyennes géométriques ${slope}`,
    ),
  largest: (species, tonnes, between, state) => `${species}, avec ${tonnes} t (${between} t), ${state}`,
  heads: {
    where: 'Où',
    measured: 'Animaux mesurés',
    meanG: 'Poids moyen, g',
    kgPerHa: 'kg par ha',
    tonnes: 'Tonnes',
    interval: (share) => `Intervalle à ${share}`,
  },
  allStrata: 'Toutes les strates visitées',
  someOf: (some, all) => `${some} sur ${all}`,
  caption: 'Poids par strate',
  origins: {
    head: 'D’où viennent les poids',
    explained: s(
      'Chaque animal est pesé d’après une courbe passant par des animaux mesurés et pesés : W est le poids d’un animal, L sa longueur. Voyez si le poids d’un animal est plausible. La dispersion est un écart type des animaux autour de la courbe : environ deux sur trois en sont plus près. Hors des longueurs des animaux pesés, un poids n’est qu’une supposition.',
    ),
    caption: 'Courbes du poids selon la longueur',
    from: 'Origine',
    lengths: 'Leurs longueurs, mm',
    curve: 'Courbe',
    scatter: 'Dispersion',
    one: 'Un animal de',
    weighs: (mm, grams) => s(`${mm} mm : ${grams} g`),
    outside: 'Hors de ces longueurs',
    noneOutside: 'aucun',
    notTold: 'non dites',
    between: (low, high) => `${low}\u00a0à\u00a0${high}`,
    units: (formula, length, weight) => `${formula} (${length}, ${weight})`,
  },
  means: {
    head: s('Par des poids moyens publiés : un ordre de grandeur seulement'),
    explained: s(
      'Aucune courbe n’est connue pour ces espèces ; le nombre d’animaux est donc multiplié par des poids moyens venus d’ailleurs. Les poids moyens d’une même espèce varient d’un facteur deux à cinq d’un lieu à l’autre ; les tonnes forment une fourchette où aucun nombre ne vaut mieux qu’un autre.',
    ),
    line: (species, tonnes, weights) => s(`${species} : ${tonnes} ; poids d’un animal : ${weights}`),
    tonnes: (between, animals, stations) =>
      `${between} t pour ${counted(animals, 'animal', 'animaux')} à ${counted(stations, 'station')}`,
    noTonnes: 'aucun tonnage ne peut être donné',
    oneWeight: (grams, state) => `${grams} g (${state})`,
    weights: (low, high, state) => `${low} à ${high} g (${state})`,
    by: (weights, source) => `${weights} (${source})`,
  },
  without: 'Sans poids, et pourquoi',
  toRead: 'À lire avec les poids',
  weightsOf: (species) => s(`Les poids : ${species}`),
  weightsHead: 'Poids',
  pairLine: (species, curve, from) => s(`${species} : ${curve} (${from})`),
};
