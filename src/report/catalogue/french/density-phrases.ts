/** Comment une densité se dit à côté de son bandeau, dans une phrase et dans un tableau. */

import { counted } from '../../../survey/counted.ts';
import type { DensityPhrases } from '../density-phrases.ts';
import { spacedText } from './typography.ts';

export const densityPhrasesFr: DensityPhrases = {
  // à côté d’un bandeau
  noAnswerYet: 'pas encore de réponse',
  notRecorded: 'non observée',
  noSpread: 'aucune dispersion',
  stationsShort: (stations) => `${stations} st.`,
  perHa: (density) => `${density} par ha`,
  of: (some, all) => `${some} sur ${all}`,
  inTable: '… en entier dans le tableau ci-dessous',
  // dans une phrase
  noAnswer: 'Pas de réponse',
  sure: (share) => `${share} de certitude`,
  sureBelow: (share) => `avec ${share} de certitude, moins de`,
  spreadUnknown: ' (on ne sait pas de combien cela peut s’écarter)',
  between: (sure, low, high) => ` (entre ${low} et ${high} avec ${sure})`,
  recordedAt: (some, all, animals) => `observée à ${counted(some, 'station')} sur ${all}, ${animals}`,
  animals: (count, one) => `${count} ${one ? 'animal' : 'animaux'}`,
  unseen: (stations, areaM2) =>
    `${stations === '1' ? 'pas observée à la seule station' : `observée à aucune des ${stations} stations`} (${areaM2} m² prospectés)`,
  ifScattered: (bound) => `${bound} par ha si les animaux sont dispersés`,
  ifClumped: (bound) => `, moins de ${bound} s’ils sont agrégés`,
  below: (bound) => `moins de ${bound}`,
  boundOr: (bound) => ` ou ${bound}`,
  stock: (stock, range, areaHa) => spacedText(` ; environ ${stock}${range} sur ${areaHa}\u00a0ha`),
  stockRange: (low, high) => ` (${low} à ${high})`,
  // sous une figure de bandeaux
  bandsExplained: spacedText(
    'Plus le bandeau est sombre, plus les comptages plaident pour cette densité. Le grand trait est l’estimation, les traits fins ' +
      'sont les bornes de l’intervalle. Là où rien n’a été observé, le bandeau s’efface à partir de zéro : le trait fin plein est la ' +
      'borne si les animaux sont agrégés, le pointillé la borne s’ils sont dispersés. L’axe est régulier à son bout gauche, ' +
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
    foundAt: 'Observée à, stations',
    animals: 'Animaux',
    searched: 'Prospecté, m²',
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
  upperEnds: spacedText(
    'La borne supérieure d’une strate peut dépasser celle de toutes les strates ensemble : chaque intervalle tient sa propre promesse, et dans une somme les erreurs se compensent, si bien que le sien est moins large. Les bornes ne s’additionnent ni ne se retranchent.',
  ),
  zeroStrata:
    'Les strates où une espèce n’a pas été observée ajoutent un peu à la borne supérieure de son intervalle, et non pas rien.',
  kBySource: (source, ks) => spacedText(`k, ${source} : ${ks}`),
  zeroBounds: (told) =>
    spacedText(
      `Non observée : la première borne vaut si les animaux sont agrégés (${told}), la seconde s’ils sont dispersés.`,
    ),
  sources: { archive: 'tiré de l’archive', default: 'par défaut', chosen: 'choisi' },
};
