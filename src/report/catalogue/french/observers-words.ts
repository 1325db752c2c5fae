/** Ce qu’on ne peut pas dire des plongeurs, et ce qu’il faut savoir à côté de ce qu’on peut dire. */

import type { observersWords } from '../observers-words.ts';

export const observersWordsFr = {
  'observers-too-few-pairs':
    'Comptées par deux plongeurs : {pairs} {pairs:bande|bandes} où l’un au moins en a vu ; à moins de 3 il n’y a pas de limites ; faites parcourir plus de bandes par un second plongeur (passage 2)',
  'observers-neither-saw':
    'Sur {belts} {belts:bande|bandes} ni l’un ni l’autre n’en a vu : ils n’y sont d’accord sur rien, et {belts:elle n’est|elles ne sont} pas dans la comparaison',
  'observers-no-person':
    'Une bande ne dit pas qui l’a parcourue : les passages 1 et 2 sont comparés, quels que soient les plongeurs, et les deux ont pu changer de place d’une bande à l’autre',
  'observers-few-animals':
    'Moins de 5 animaux sur la bande médiane : des rapports de si petits nombres sautent d’eux-mêmes, et le demi-animal ajouté à chacun les ramène vers 1',
  'observers-few-belts':
    'À moins de 10 bandes, les limites elles-mêmes peuvent être fausses de la moitié de leur largeur ou plus',
  'observers-one-in-stratum':
    '{observer} a noté toutes les {stations} stations de {stratum} et personne d’autre n’y a noté : on ne peut pas distinguer si {stratum} diffère ou si {observer} compte autrement',
  'observers-holes':
    '{empty} des {cells} paires de personne et de strate sont vides : les différences entre strates sont en partie des différences entre personnes ; échangez-les d’un jour à l’autre',
  'observers-swim-other-area':
    'Seconds passages non comparés, parce qu’ils n’ont pas prospecté la même surface que le premier ({count}) : station/bande {belts}',
  'observers-swim-not-searched':
    'Seconds passages non comparés, parce que l’un des deux a été perdu ou attend encore une réponse ({count}) : station/bande {belts}',
  'observers-swim-alone':
    'Passages non comparés, parce que seuls les passages 1 et 2 d’une bande le sont, et que ceux-ci n’ont pas de passage 1 ou sont ultérieurs ({count}) : station/bande (passage) {belts}',
  'observers-unnamed':
    '{stations:À|Aux} {stations} {stations:station|stations concernées}, personne n’est écrit comme ayant noté',
} as const satisfies Record<keyof typeof observersWords, string>;
