/** Ce qui peut être faux dans un fichier, un tableau ou une case : la valeur d’abord, puis ce qui serait juste. */

import type { problemsReading } from '../problems-reading.ts';

export const problemsReadingFr = {
  'nothing-to-read': 'il n’y a rien à lire[ dans {path}] ; donnez le dossier ou les fichiers des tableaux',
  'no-such-file': 'ce fichier ou ce dossier n’existe pas ; vérifiez le chemin',
  'file-unreadable':
    'ce fichier ne peut pas être lu[ : {why}] ; enregistrez-le en CSV (UTF-8) ou en XLSX, puis relisez-le',
  'broken-quotes':
    'les guillemets de cette ligne ne se ferment pas ; un texte entre guillemets en demande un au début et un à la fin',
  'unknown-table':
    '« {value} » n’est pas un nom de tableau[ ; est-ce {suggestion} ?][ ; les tableaux sont {tables}]',
  'not-a-table': '« {value} » n’est pas l’un des tableaux et n’a pas été lu',
  'missing-column':
    'la colonne {column} manque, et chaque ligne de ce tableau en a besoin[ ; est-ce « {suggestion} » ?]',
  'unknown-column':
    'ce tableau ne connaît pas la colonne « {value} » ; elle n’a pas été lue[ ; est-ce {suggestion} ?]',
  'repeated-column': 'la colonne « {value} » est deux fois ici ; n’en gardez qu’une',
  'row-too-long':
    'cette ligne a {cells} cases et le tableau {columns} {columns:colonne|colonnes} (au-delà : « {value} ») ; y a-t-il une virgule dans un texte sans guillemets ?',
  'missing-value': '{column} est vide, et cette ligne en a besoin',
  'not-a-number': '{column} vaut « {value} », qui n’est pas un nombre[ ; est-ce {suggestion} ?]',
  'number-out-of-range': '{column} vaut {value} ; il faudrait {range}[ ; est-ce {suggestion} ?]',
  'not-a-whole-number': '{column} vaut {value} ; il faudrait un nombre entier[ ; est-ce {suggestion} ?]',
  'not-a-date':
    '{column} vaut « {value} », qui n’est pas une date ; écrivez année-mois-jour, comme 2026-03-09[ ; est-ce {suggestion} ?]',
  'not-a-time':
    '{column} vaut « {value} », qui n’est pas une heure ; écrivez heures et minutes, comme 07:45[ ; est-ce {suggestion} ?]',
  'not-one-of':
    '{column} vaut « {value} » ; il faudrait l’un de ces mots : {options}[ ; est-ce {suggestion} ?]',
  'cover-not-understood':
    '{column} contient « {part} » ; écrivez chaque couverture avec son pourcentage, comme « sand:40; rubble:60 »',
  'file-too-large':
    '« {name} » est plus grand que ce que ce programme ouvre, compressé ou non (la limite est {limitMb} Mo) ; enregistrez les tableaux en CSV, ou en plusieurs parties',
  'too-many-rows': 'ce fichier a plus de {limit} lignes ; lisez-le en plusieurs parties',
  'too-many-columns': 'ce tableau a {columns} colonnes, et la limite est {limit} ; est-ce le bon fichier ?',
  'cell-too-long':
    '{column} contient {letters} lettres, et une case en tient au plus {limit} ; un guillemet est-il resté ouvert plus haut ?',
  'file-encoding-assumed':
    'ce texte n’est pas écrit en UTF-8 ; il a été lu comme Windows-1252 (Europe occidentale) : regardez les lettres accentuées, ou enregistrez-le en CSV (UTF-8)',
  'rows-above-header':
    '{rows} {rows:ligne|lignes} au-dessus de l’en-tête (« {value} ») {rows:n’a pas été lue|n’ont pas été lues}',
  'repeated-header': 'la ligne d’en-tête revient ici ; elle n’a pas été lue comme donnée',
  'second-table':
    'cette ligne ressemble à l’en-tête d’un autre tableau[ ({table})] ; donnez à chaque tableau sa feuille ou son fichier, ou nommez les deux dans une correspondance avec headerRow et lastRow',
  'footer-row':
    '« {value} » ressemble à une ligne écrite sous le tableau et non à une donnée ; enlevez-la, ou laissez-la de côté dans une correspondance avec lastRow ou leaveOut',
  'unnamed-column':
    'la colonne {column} n’a pas de nom dans l’en-tête et n’a pas été lue (elle contient « {value} ») ; nommez-la, ou appelez-la « #{number} » dans une correspondance',
  'hidden-sheet':
    'la feuille « {value} » est masquée et n’a pas été lue ; affichez-la dans le tableur, ou nommez-la dans une correspondance',
  'merged-cells':
    'les cases {value} sont fusionnées, et seule la première contient la valeur ; séparez-les et remplissez chacune, ou écrivez dans une correspondance mergedCells: "repeat"',
  'formula-values-read':
    '{cells} cases contiennent des formules ; les valeurs qu’elles montraient à l’enregistrement du fichier ont été lues',
  'formula-without-value':
    'la formule de {value} n’a pas de valeur utilisable ; ouvrez le fichier dans un tableur, regardez la case et enregistrez de nouveau',
  'comma-unclear':
    '{column} vaut « {value} » : {asDecimal} ou {asThousands} ? Écrivez le nombre sans virgule, ou dites dans une correspondance decimal: "comma" ou decimal: "point"',
  'commas-decided':
    'les virgules des nombres ont été lues comme {habit}, parce que ce fichier contient « {value} »',
  'day-or-month-first':
    '{column} vaut « {value} »[ : {dayFirst} si le jour vient d’abord][, {monthFirst} si le mois vient d’abord] ; écrivez année-mois-jour, ou dites dans une correspondance dateForms: "D/M/YYYY" ou "M/D/YYYY"',
  'day-order-decided':
    'les jours de {column} ont été lus avec {habit} d’abord, à cause de « {value} » ; rien dans la colonne ne dit le contraire',
  'day-range':
    '{column} vaut « {value} », de {first} à {last} ; écrivez le jour qui compte, ou dites dans une correspondance dateRange: "first" ou "last"',
  'number-approximate':
    '{column} vaut « {value} », qui n’est pas un nombre unique[ ; est-ce {suggestion} ?] ; écrivez le nombre qui compte, ou dites dans une correspondance comment lire de tels nombres (approximate)',
  'looks-like-missing':
    '{column} vaut {value} ; est-ce mesuré, ou cela veut-il dire « inconnu » ? Une correspondance peut nommer de tels nombres sous missing',
  'coordinates-differ':
    '{degrees} degrés ici, et « {written} » dans {position} ; lequel est juste ? Les degrés ont été pris',
  'more-of-the-same':
    '{count} {count:autre|autres} du genre « {code} » {count:n’est pas montré|ne sont pas montrés}',
} as const satisfies Record<keyof typeof problemsReading, string>;
