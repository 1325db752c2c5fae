/** Ce qui a été tenu pour acquis en lisant une position, et pourquoi un texte n’en donne aucune. */

import type { positionWords } from '../position-words.ts';

/** `{value}` est le texte tel que saisi. */
export const positionWordsFr = {
  // tenu pour acquis
  'no-hemisphere': '« {value} » ne dit ni N ni S, ni E ni W ; il a été lu comme nord et est : est-ce juste ?',
  'sign-and-letter':
    '« {value} » a un moins et la lettre qui dit la même chose ; ils ont été lus comme un seul',
  'whole-degrees':
    '« {value} » ne donne que des degrés entiers, à 111 km l’un de l’autre ; les minutes manquent-elles ?',
  'mixed-notations': '« {value} » écrit latitude et longitude de deux façons ; chacune est-elle juste ?',
  'joined-minutes': '« {value} » a été lu comme degrés et minutes écrits ensemble (1745.30 est 17° 45.30′)',
  'seconds-or-decimals':
    '« {value} » a été lu comme degrés, minutes et secondes ; les derniers chiffres sont-ils des décimales de minute ?',
  'utm-letter-as-hemisphere':
    'la lettre S de « {value} » a été lue comme la moitié sud de la terre, non comme la bande de latitude de 32 à 40° N ; est-ce juste ?',
  // pas de position
  empty: 'aucune position n’est écrite ; écrivez-la comme 17 45.30 S 177 24.00 E',
  'not-understood': '« {value} » n’est pas une position ; écrivez-la comme 17 45.30 S 177 24.00 E',
  'one-coordinate-only': '« {value} » n’a qu’une coordonnée ; une position est une latitude et une longitude',
  'too-many-numbers':
    '« {value} » a plus de nombres qu’une position ; écrivez-la comme 17 45.30 S 177 24.00 E',
  'letters-do-not-fit':
    'les lettres de « {value} » ne font pas une latitude et une longitude : un N ou un S, et un E ou un W',
  'ambiguous-commas':
    'les virgules de « {value} » peuvent être décimales ou séparer des nombres ; écrivez 17.750 S 177.400 E',
  'sign-against-letter': '« {value} » a un moins à côté de N ou E ; lequel des deux est juste ?',
  'letter-o': 'la lettre O de « {value} » est l’ouest en français et l’est en allemand ; écrivez W ou E',
  'minutes-out-of-range': '« {value} » a des minutes ou secondes de 60 ou plus ; quel chiffre est juste ?',
  'degrees-out-of-range': '« {value} » dépasse 90° de latitude ou 180° de longitude ; sont-elles échangées ?',
  'fraction-before-last-part':
    '« {value} » a une fraction avant sa dernière partie ; seule la dernière des parties, degrés, minutes ou secondes, en a une',
  'utm-out-of-range':
    '« {value} » est hors de son fuseau UTM ; le fuseau est-il juste, ou manque-t-il un chiffre ?',
  'utm-without-hemisphere':
    '« {value} » donne un fuseau UTM sans sa lettre ; au nord ou au sud de l’équateur ?',
  'utm-not-converted': '« {value} » est une position UTM, qui ne peut pas être lue ici ; écrivez des degrés',
} as const satisfies Record<keyof typeof positionWords, string>;
