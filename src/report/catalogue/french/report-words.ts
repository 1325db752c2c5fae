/** Les mots fixes du rapport. Chaque nombre a son unité et son n. */

import type { ReportWords } from '../report-words.ts';
import { spacedText } from './typography.ts';

export const reportWordsFr: ReportWords = {
  invented: spacedText('Tout est inventé : lieux, animaux, comptages et personnes.'),
  asked: 'La demande',
  noPurpose: 'Personne n’a écrit ce que cette campagne doit décider.',
  answer: 'La réponse',
  where: 'Localisation des stations',
  density: 'Densité par espèce et par strate',
  surveys: 'D’une campagne à l’autre',
  surveysCaution: spacedText(
    'Un changement ne se lit pas sur deux bandeaux : des bandeaux qui se recouvrent ne prouvent pas que rien n’a changé, et la différence a sa propre estimation et son propre intervalle.',
  ),
  timeExplained: spacedText(
    'Chaque bandeau est placé aux jours de sa campagne. Plus il est sombre, plus les comptages plaident pour cette densité ; le trait épais est l’estimation, les traits fins sont les bornes de l’intervalle. Là où rien n’a été observé, le bandeau s’efface à partir de zéro, et le trait pointillé est la borne si les animaux sont dispersés. L’axe est régulier à son pied, pour que zéro ait sa place ; plus haut, chaque pas multiplie. Un trait mince relie les estimations comptées de la même façon, pour guider l’œil ; ce n’est pas la tendance.',
  ),
  strips: 'Les stations, bande par bande',
  stripsExplained: spacedText(
    'Chaque station est dessinée comme sa propre ligne de bandes, à l’échelle le long de la ligne avec ses intervalles ; la largeur des bandes n’est pas à l’échelle. Le nombre sous une bande est celui de ses animaux, toutes espèces ensemble.',
  ),
  sizes: 'Tailles',
  sizesExplained:
    'Chaque animal mesuré représente les animaux comptés de sa bande, si bien que les bandes denses, où seuls les premiers animaux sont mesurés, pèsent par leurs comptages. Une espèce de moins de 5 animaux mesurés est dans le tableau seul.',
  noSizes: 'Aucune espèce n’a été mesurée.',
  effort: 'Ce qui a été fait',
  leftOut: 'Ce qui a été laissé de côté, et pourquoi',
  nothingLeftOut: spacedText(
    'Rien n’a été laissé de côté : chaque station et chaque bande écrites sont dans les comptages et dans la surface.',
  ),
  questions: 'Questions encore ouvertes',
  noQuestions: spacedText('Aucune : chaque question des vérifications a sa réponse.'),
  methods: 'Méthode de calcul',
  caveatHead: 'Ce que cette campagne peut dire et ne peut pas dire',
  caveat: [
    spacedText(
      'Elle décrit les strates visitées, les jours où elles l’ont été, et les animaux que des plongeurs peuvent voir. Elle ne dit rien de l’habitat qui n’a pas été visité : n’étendez pas ces densités à d’autres récifs ni à d’autres profondeurs.',
    ),
    'Une espèce non observée peut être là quand même, au-dessous de la borne qui l’accompagne. Les animaux enfouis ou cachés ne sont pas comptés.',
  ],
  severities: { stop: 'Suspend la réponse', explain: 'Attend une explication', note: 'Bon à savoir' },
  targetsListed: 'La liste des espèces cherchées par les plongeurs a été donnée avec la campagne',
  targetsAssumed: spacedText(
    'Aucune liste d’espèces n’a été donnée avec la campagne : toute espèce du protocole et toute espèce vue un jour dans ce carnet sous ce protocole est prise comme cherchée',
  ),
};
