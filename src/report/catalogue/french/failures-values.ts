/** Des valeurs propres qu’une personne a nommées et que le carnet n’a pas. */

import type { failuresValues } from '../failures-values.ts';

export const failuresValuesFr = {
  'no-such-own-value':
    'le carnet n’a pas de valeur propre « {name} » de {species}[ ; est-ce « {nearest} » ?][ ; il a : {known}] ; les valeurs fournies avec le programme ne peuvent pas être retirées, une valeur propre passe devant elles',
  'several-own-values':
    'il y a plus d’une valeur propre « {name} » : {known} ; nommez la bonne avec --source',
  'withdraw-needs':
    'pour retirer « {name} », le carnet doit savoir de quelle espèce et pourquoi ; donnez {missing}',
} as const satisfies Record<keyof typeof failuresValues, string>;
