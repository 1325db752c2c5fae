/** À quel point est sûre une valeur qui ne vient pas de la campagne, et ce que disent les poids faits avec elle. */

import type { holdsOfWeights, reasonsValues } from '../reasons-values.ts';

export const reasonsValuesFr = {
  'value-own': 'la vôtre : {source}',
  'value-read': '{source}',
  'value-memory': 'de mémoire, non vérifiée à la source ({source})',
  'value-derived': 'calculée à partir de nombres publiés : {source}',
  'no-weights':
    'Aucun poids pour {species} : pesez des animaux à bord (tableau weights, état {state}), ou apportez une paire longueur-poids ou un poids moyen avec « slateline values --add FICHIER.csv »',
  'no-lengths-for-pair':
    'Une paire longueur-poids de {species} est connue, mais aucun animal n’a été mesuré, et le poids de la longueur moyenne serait faux ; mesurez-en, ou apportez un poids moyen avec « slateline values --add FICHIER.csv »',
  'no-conversion':
    'En suspens : les poids sont à l’état {from} et l’état {to} est demandé ; aucun rapport avec source de {from} à {to} n’est connu pour {species}. Apportez-en un avec « slateline values --add FICHIER.csv », ou demandez --state {from}',
  'processed-pair':
    'En suspens : cette paire longueur-poids a été faite avec des animaux à l’état {state}, et les plongeurs ont mesuré des animaux vivants ; prenez une paire d’animaux vivants et une conversion, ou laissez-la passer par son nom avec --accept',
  'only-from-memory':
    'En suspens : le seul poids connu pour {species} est de mémoire et n’a jamais été vérifié à la source ; pesez des animaux, apportez une valeur avec « slateline values --add FICHIER.csv », ou laissez-le passer par son nom avec --accept',
  'pair-implausible':
    'En suspens : par cette paire, un animal de {lengthMm} mm pèse {weightG} g, et un corps de cette longueur pèse entre {lightestG} et {heaviestG} g ; la paire était-elle en cm, ou le poids en kg ?',
  'weight-of-one': 'Un animal de {lengthMm} mm pèse {weightG} g par cette paire : est-ce plausible ?',
  'outside-fitted-range':
    '{percent} % des animaux sont hors des longueurs dont la paire est tirée ({fromMm} à {toMm} mm) : leurs poids sont devinés',
  'fitted-range-unknown':
    'Les longueurs dont la paire est tirée ne sont pas dites : personne ne voit où elle cesse de valoir',
  'lengths-borrowed':
    'Les longueurs de {animals} {animals:animal|animaux} ({percent} % des animaux comptés) sont prises à leur station ou à leur strate, sinon à la campagne',
  'no-correction':
    'La dispersion autour de la paire n’est pas dite ; la courbe est prise telle quelle : elle donne des poids médians, quelques pour cent au-dessous des poids moyens',
  'parameters-unknown':
    'À quel point la paire elle-même est sûre n’est pas dit : l’intervalle contient ce qui vient des stations, et rien pour la paire',
  'mean-weight-used':
    'Nombre fois un poids moyen venu d’ailleurs : les poids moyens d’une espèce varient d’un facteur deux à cinq d’un lieu à l’autre ; c’est donc un ordre de grandeur',
  'mean-weight-of-all-sizes':
    'Le poids moyen est celui d’animaux de toutes tailles, et ceux de {limitMm} mm et plus pèsent davantage : les tonnes sont trop basses, et un quota en tonnes fait moins d’animaux qu’il n’est dit',
  'mean-weights-differ':
    'Les poids moyens publiés vont de {lowG} à {highG} g ; la fourchette est faite du plus bas et du plus haut, et aucun nombre n’y vaut mieux qu’un autre',
  'mean-weight-no-error':
    'Le poids moyen n’a pas d’erreur type : l’intervalle ne contient que celle du comptage',
  'few-weighed':
    'La paire repose sur {animals} {animals:animal pesé|animaux pesés} : pesez-en plus, de toutes longueurs',
  'no-own-weights':
    'Aucun poids à vous pour {species} : apportez une paire longueur-poids ou un poids moyen avec « slateline values --add FICHIER.csv », ou laissez le programme choisir (--pair auto)',
  'too-few-weighed':
    '{animals:Seul|Seuls} {animals} {animals:animal|animaux} à l’état {state} de {species} {animals:a été pesé|ont été pesés} ; une droite longueur-poids en demande {least} de longueurs différentes',
  'weights-without-state':
    '{animals} {animals:animal pesé est laissé|animaux pesés sont laissés} de côté, parce que personne n’a écrit {animals:s’il était vivant, éviscéré, salé ou séché|s’ils étaient vivants, éviscérés, salés ou séchés}',
  'weighings-impossible':
    '{animals} {animals:animal pesé est laissé|animaux pesés sont laissés} hors de la droite, parce qu’aucun corps n’a un tel poids à sa longueur (le premier : {lengthMm} mm, {weightG} g) ; regardez la fiche',
  'conversion-used': 'De {from} à {to} par {percent} % ({source})',
  'conversion-bounds':
    'De {from} à {to} on ne connaît que des bornes, {lowPercent} à {highPercent} % ({source}) : une fourchette, et aucun nombre n’y vaut mieux qu’un autre',
  'other-measure':
    '{animals} {animals:animal a été mesuré|animaux ont été mesurés} autrement que ceux de la paire ({measure}) : {animals:son poids peut|leurs poids peuvent} être faux',
} as const satisfies Record<keyof typeof reasonsValues, string>;

export const holdsOfWeightsFr = {
  'only-from-memory': 'un poids de mémoire que personne n’a vérifié',
  'processed-pair': 'une paire faite avec des animaux transformés',
  'pair-implausible': 'une paire par laquelle un animal pèse ce qu’il ne peut guère peser',
} as const satisfies Record<keyof typeof holdsOfWeights, string>;
