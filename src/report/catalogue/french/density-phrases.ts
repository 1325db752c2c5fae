/** Comment une densité se dit à côté de son bandeau, dans une phrase et dans un tableau. */

import type { DensityPhrases } from '../density-phrases.ts';
import { spacedText } from './typography.ts';

export const densityPhrasesFr: DensityPhrases = {
  // à côté d’un bandeau
  noAnswerYet: 'pas encore de réponse',
  notRecorded: 'non notée',
  noSpread: 'aucun écart',
  stationsShort: (stations) => `${stations} st.`,
  perHa: (density) => `${density} par ha`,
  of: (some, all) => `${some} sur ${all}`,
  inTable: '… en entier dans le tableau ci-dessous',
  // dans une phrase
  noAnswer: 'Pas de réponse',
  sure: (share) => `sûr à ${share}`,
  sureBelow: (share) => spacedText(`sûr à ${share} : moins de`),
  spreadUnknown: ' (on ne sait pas de combien cela peut s’écarter)',
  between: (sure, low, high) => spacedText(` (${sure} : entre ${low} et ${high})`),
  recordedAt: (some, all, animals) =>
    `notée à ${some} ${some === '1' ? 'station' : 'stations'} sur ${all}, ${animals}`,
  animals: (count, one) => `${count} ${one ? 'animal' : 'animaux'}`,
  unseen: (stations, areaM2) => `notée à aucune des ${stations} stations (${areaM2} m² fouillés)`,
  ifScattered: (bound) => `${bound} par ha si dispersée`,
  ifClumped: (bound) => `, moins de ${bound} si en groupes`,
  below: (bound) => `moins de ${bound}`,
  boundOr: (bound) => ` ou ${bound}`,
  stock: (stock, range, areaHa) => spacedText(` ; environ ${stock}${range} sur ${areaHa}\u00a0ha`),
  stockRange: (low, high) => ` (${low} à ${high})`,
  // sous une figure de bandeaux
  bandsExplained: spacedText(
    'Plus le bandeau est sombre, plus les comptages parlent pour cette densité. Le grand trait est l’estimation, les traits fins ' +
      'sont les bouts de l’intervalle. Là où rien n’a été noté, le bandeau s’efface à partir de zéro : le trait fin plein est la ' +
      'borne si les animaux sont en groupes, le pointillé la borne s’ils sont dispersés. L’axe est régulier à son bout gauche, ' +
      'pour que zéro y ait sa place ; plus à droite, chaque pas égal multiplie.',
  ),
  tickBelowDarkest: spacedText(
    'Là où peu d’animaux ont été vus, le trait est au-dessous de la partie la plus sombre : la vérité est alors plus souvent au-dessus de ce qui a été vu qu’au-dessous.',
  ),
  tickLeftOfDarkest: spacedText(
    'Là où peu d’animaux ont été vus, le trait est à gauche de la partie la plus sombre : la vérité est alors plus souvent au-dessus de ce qui a été vu qu’au-dessous.',
  ),
  axis: (even) => spacedText(`animaux par ha : régulier jusqu’à ${even}, puis chaque pas multiplie`),
  // dans un tableau
  heads: {
    foundAt: 'Trouvée à, stations',
    animals: 'Animaux',
    searched: 'Fouillé, m²',
    density: 'Animaux par ha',
    error: 'Erreur type',
    interval: (share) => `Intervalle à ${share}, par ha`,
    method: 'Intervalle par',
    stock: 'Animaux en tout',
  },
  intervalsBy: (caption, method) => spacedText(`${caption} ; intervalles : ${method}`),
  unknown: 'inconnu',
  // les remarques au-dessous
  allRows: 'Toutes les lignes',
  noteOfRows: (rows, note) => spacedText(`${rows} : ${note}.`),
  speciesIn: (species, where) => `${species} dans ${where}`,
  zeroStrata:
    'Les strates où une espèce n’a pas été notée ajoutent un peu au bout supérieur de son intervalle, et non pas rien.',
  kBySource: (source, ks) => spacedText(`k, ${source} : ${ks}`),
  zeroBounds: (told) =>
    spacedText(
      `Non notée : la première borne vaut si les animaux sont en groupes (${told}), la seconde s’ils sont dispersés.`,
    ),
  sources: { archive: 'tiré de l’archive', default: 'par défaut', chosen: 'choisi' },
};
