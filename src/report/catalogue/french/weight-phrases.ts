/** Comment les poids se disent : une paire, un poids moyen, leur origine, un tableau de biomasse. */

import type { WeightPhrases } from '../weight-phrases.ts';
import { spacedText as s } from './typography.ts';

export const weightPhrasesFr: WeightPhrases = {
  states: { live: 'vivant', gutted: 'éviscéré', salted: 'salé', dried: 'séché' },
  measures: {
    'body relaxed': 'corps détendu',
    'body contracted': 'corps contracté',
    'basal diameter': 'diamètre de la base',
    'shell length': 'longueur de la coquille',
  },
  curve: (formula, lengthUnit, weightUnit, state) =>
    `${formula}, L en ${lengthUnit}, W en ${weightUnit} ${state}`,
  rangeNotTold: 'longueurs dont elle est tirée non dites',
  range: (fromMm, toMm) => `d’animaux de ${fromMm} à ${toMm} mm`,
  spread: (spread) => `dispersion ${spread} en ln W`,
  animals: (n) => `${n} animaux`,
  mean: (grams, state) => `${grams} g ${state}`,
  meanError: (grams) => `erreur type ${grams} g`,
  meanLength: (mm) => `longueur moyenne ${mm} mm`,
  between: s(' ; '),
  or: ', ou ',
  source: (source) =>
    source.replace(/^(\d+) animals weighed in this book$/, '$1 animaux pesés dans ce carnet'),
  memory: (source) => s(`de mémoire, non vérifié : ${source}`),
  basis: (species, told, from) => s(`${species} : ${told} (${from})`),
  fit: (explained, factor, slope) =>
    s(
      `la droite explique ${explained} de la dispersion de ln W ; les poids moyens sont ${factor} fois la courbe ; pente de la droite des moyennes géométriques ${slope}`,
    ),
  allRows: 'Toutes les lignes',
  andMore: (rows, more) => `${rows} et ${more} autres`,
  noteOf: (rows, note) => s(`${rows} : ${note}`),
  largest: (species, tonnes, between, state) => `${species}, ${tonnes} t (${between} t), ${state}`,
  heads: {
    where: 'Où',
    measured: 'Mesurés, sur les animaux',
    meanG: 'Poids moyen, g',
    kgPerHa: 'kg par ha',
    tonnes: 'Tonnes',
    interval: (share) => `Intervalle à ${share}`,
  },
  allStrata: 'Toutes les strates visitées',
  someOf: (some, all) => `${some} sur ${all}`,
  caption: 'Poids par strate',
};
