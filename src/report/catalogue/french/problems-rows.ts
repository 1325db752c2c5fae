/** Ce que les lignes disent les unes des autres : noms qui ne mènent nulle part, comptages impossibles ensemble. */

import type { problemsRows } from '../problems-rows.ts';

export const problemsRowsFr = {
  'unknown-species': 'l’espèce « {value} » n’est pas dans la liste des espèces[ ; est-ce {suggestion} ?]',
  'species-spelling': 'l’espèce « {value} » est nouvelle ici ; est-ce {suggestion} ?',
  'unknown-survey': 'la campagne « {value} » n’est pas parmi les campagnes[ ; est-ce {suggestion} ?]',
  'unknown-protocol': 'le protocole « {value} » n’est pas parmi les protocoles[ ; est-ce {suggestion} ?]',
  'unknown-station':
    'la station « {value} » n’est pas parmi les stations de cette campagne[ ; est-ce {suggestion} ?]',
  'unknown-transect':
    'la bande « {value} » n’est pas parmi les bandes de cette station[ ; est-ce {suggestion} ?]',
  'station-without-stratum':
    'cette station n’a pas de strate et ne représente donc aucune surface ; donnez la strate où elle se trouve[ : {suggestion} ?]',
  'unknown-stratum': 'la strate « {value} » n’est pas parmi les strates[ ; est-ce {suggestion} ?]',
  'repeated-row':
    '« {value} » est déjà écrit[ à la ligne {firstRow}][ de {firstFile}] ; ne gardez qu’une des deux lignes',
  'lengths-without-count':
    'des animaux ont été mesurés ici[ ({value})] et non comptés ; donnez le nombre de tous les animaux, mesurés compris[ : au moins {suggestion} ?]',
  'more-lengths-than-animals':
    '{value} {value:animal a été mesuré|animaux ont été mesurés}[, mais {count} {count:compté|comptés}] ; le nombre comprend les animaux mesurés[ ; {suggestion} ?]',
  'count-on-lost-transect':
    '{value} {value:animal est noté|animaux sont notés} sur une bande marquée perdue ou pas faite[ ({status})] ; lequel est juste ?',
  'none-seen-but-counted':
    'la case « rien vu » est cochée, et {value} {value:animal est compté|animaux sont comptés} ; lequel est juste ?',
} as const satisfies Record<keyof typeof problemsRows, string>;
