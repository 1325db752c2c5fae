/** Ce qu’une correspondance de fichiers étrangers peut avoir de faux, et ce qu’elle a laissé par ses règles. */

import type { problemsMapping } from '../problems-mapping.ts';

export const problemsMappingFr = {
  'mapping-invalid':
    'la correspondance ne peut pas être suivie[ à {path}][, où se trouve « {value} »][ ; il faudrait {expected}][ : {why}][ ; est-ce {suggestion} ?]',
  'mapping-file-missing':
    'la correspondance nomme le fichier « {file} »[, feuille « {sheet} »], qui n’est pas parmi les fichiers donnés[ ; est-ce {suggestion} ?]',
  'left-out-by-rule':
    '{rows} {rows:ligne|lignes}[ de {file}] {rows:a été laissée|ont été laissées} de côté par la règle « {rule} » de la correspondance',
  'first-of-several':
    '{column} de « {key} » dans {table} vaut « {value} » ici et « {kept} » plus haut ; la première valeur a été gardée',
  'added-together':
    '{rows} {rows:ligne|lignes} de {table} {rows:a été ajoutée|ont été ajoutées} à une ligne précédente sur la même espèce et la même bande',
  'read-by-rule':
    '{cells} cases de {column} dans {table} ont été lues par la règle {rule} de la correspondance',
  'asked-by-rule': '« {value} » : la correspondance demande que quelqu’un regarde cette ligne ({rule})',
  'not-in-list':
    '« {value} » n’est pas dans la liste {list} et a été gardé tel qu’écrit[ ; est-ce {suggestion} ?]',
} as const satisfies Record<keyof typeof problemsMapping, string>;
