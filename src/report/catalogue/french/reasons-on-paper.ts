/** Les raisons telles que les dit un rapport imprimé, sans les commandes du clavier. */

import type { reasonsOnPaper } from '../reasons-on-paper.ts';

export const reasonsOnPaperFr = {
  'no-weights':
    'Aucun poids n’est connu pour {species} : pesez-en quelques individus à bord (état {state}), ou trouvez une relation longueur-poids ou un poids moyen publiés',
  'no-own-weights':
    'Aucun poids de cette pêcherie n’est connu pour {species} : pesez-en quelques individus à bord, ou trouvez une relation longueur-poids ou un poids moyen publiés',
  'no-lengths-for-pair':
    'Une relation longueur-poids est connue pour {species}, mais aucun animal n’a été mesuré, et le poids d’une longueur moyenne serait faux : mesurez-en',
  'no-conversion':
    'En suspens : les poids sont à l’état {from} et l’état {to} est demandé ; aucun rapport de {from} à {to} dont la source soit donnée n’est connu pour {species}',
  'processed-pair':
    'En suspens : la relation longueur-poids vient d’animaux à l’état {state}, et les plongeurs ont mesuré des animaux vivants',
  'only-from-memory':
    'En suspens : le seul poids connu pour {species} est cité de mémoire et n’a jamais été vérifié à la source : pesez-en quelques individus, ou retrouvez la valeur',
  'no-size-limit':
    'Aucune taille limite n’est connue pour {species}, et aucune n’est supposée : il faut le barème national, ou l’indication que toute taille peut être prise',
  'no-mean-weight':
    'Aucun poids n’est connu pour {species} ; la prise est donc donnée en nombre d’animaux seulement : pesez-en quelques individus, ou trouvez un poids moyen avec sa source',
  'lone-station':
    'Une seule station dans {strata} : une moyenne, mais sans dispersion ; visitez-en une autre, ou réunissez la strate à une strate d’habitat semblable',
  'finite-population':
    'Les stations couvrent {percent} % de {strata} : la dispersion affichée est plus large que nécessaire',
  'change-other-observers':
    'Aucune des personnes qui notent n’a travaillé dans les deux campagnes ({from} ; puis {to}) : un changement peut venir des personnes',
  'trend-too-few':
    'Une tendance demande trois campagnes à des dates différentes où l’espèce a été observée avec une dispersion ; pour {species}, il y en a {surveys} à ce jour',
} as const satisfies Record<keyof typeof reasonsOnPaper, string>;
