/** Ce qui est faux dans les aires de la carte, et dans les stations comparées aux cartes et aux plans. */

import type { mapWords } from '../map-words.ts';

export const mapWordsFr = {
  // lecture
  'map-not-understood':
    'ce fichier n’est pas du {format} lisible[ ({detail})] ; enregistrez-le de nouveau : les aires en GeoJSON, KML ou GeoPackage sur WGS84, les points de route en GPX',
  'map-too-large':
    'cette carte est trop grande[ : {size}, alors que {limit} sont lus] ; partagez-la, ou simplifiez les contours',
  'map-with-entities':
    'ce fichier déclare des entités, qui pourraient lire d’autres fichiers ou grossir sans fin ; enregistrez la carte sans elles',
  'other-datum':
    '[aire {area} : ]les positions sont sur {datum} et non sur WGS84, ce qui peut déplacer une station de centaines de mètres ; enregistrez la carte sur WGS84 (EPSG 4326)',
  'map-in-metres':
    'les positions de cette carte ne sont pas des degrés (la première est {x}, {y}) : on dirait des mètres d’une projection comme l’UTM, et la carte ne dit pas laquelle ; enregistrez-la de nouveau sur WGS84 en degrés (EPSG 4326)',
  'no-area-in-map': 'il n’y a aucune aire dans {what} ; strates, zones et masques sont des polygones',
  'not-an-area':
    'laissés de côté : {count} {kind} ; seuls les polygones ont une surface : l’un d’eux est-il un contour jamais fermé ?',
  'position-not-understood':
    '[aire {area} : ][{piece}, ][point {point} : ]une position ici n’est pas faite de deux nombres de degrés possibles (les cartes ont la longitude d’abord) ; corrigez-la, ou redessinez ce contour',
  // une aire
  'open-ring':
    '[aire {area} : ][{piece} : ]le contour finit à {gapM} m de son début ; il a été fermé par une ligne droite : est-ce juste ?',
  'too-few-points':
    '[aire {area} : ][{piece} : ]un contour demande trois points différents pour tenir une surface, et celui-ci en a {points}',
  'repeated-points':
    '[aire {area} : ][{piece} : ]points écrits deux fois de suite : {count} ; rien n’est perdu pour autant',
  'self-crossing':
    '[aire {area} : ][{piece} : ]le contour se croise lui-même {times}[, d’abord à {at}], si bien qu’on ne distingue plus dedans et dehors ; démêlez-le là',
  'hole-outside':
    '[aire {area} : ][{piece} : ]ce trou est hors du contour où il doit être découpé ({points} de ses points) ; déplacez-le, ou faites-en un morceau',
  'hole-overlap':
    '[aire {area} : ][{piece} : ]{areaHa} ha de ce trou sont hors du contour où il est découpé, ou dans un autre trou ; ils seraient ôtés de la surface sans en faire partie : dessinez le trou à l’intérieur, et un seul trou là où deux se touchent',
  'pieces-overlap':
    '[aire {area} : ]des morceaux se recouvrent, de {areaHa} ha en tout (surtout les morceaux {first} et {second}), qui seraient comptés deux fois ; réunissez-les en un seul',
  'latitude-impossible':
    '[aire {area} : ][{piece}, ][point {point} : ]une latitude de {latitude} est impossible : elles s’arrêtent à 90 degrés ; latitude et longitude sont-elles échangées ? Les cartes ont la longitude d’abord',
  'swapped-coordinates':
    '[aire {area} : ][{piece}, ][point {point}, ][{at} : ]latitude et longitude sont échangées[ : à {awayKm} km du reste, et à {exchangedKm} km une fois retournées] ; les cartes ont la longitude d’abord : échangez-les',
  'far-from-neighbours': '[l’aire {area} ]est à {awayKm} km du reste de la carte ; est-elle au bon endroit ?',
  sliver:
    '[aire {area} : ][{piece} : ]ce morceau a {widthM} m de large en moyenne ({areaHa} ha), trop mince pour une bande ; est-ce un trait qui a glissé ?',
  'area-typed-differs':
    'la strate {area} a été saisie avec {typedHa} ha, mais son polygone a {mapHa} ha, {factor} fois cela[ (saisi en {unit} ?)] ; la carte l’emporte : corrigez le tableau, ou la carte',
  // les aires ensemble
  overlap:
    '{area} et {other} prennent toutes deux {areaHa} ha[ (à {errorHa} près)] ; chaque lieu appartient à une seule : redessinez le contour entre elles',
  'overlap-sliver':
    '{area} et {other} se recouvrent d’un ruban large de {widthM} m en moyenne ({areaHa} ha) ; leur contour commun a été dessiné deux fois',
  'gap-sliver':
    'un ruban large de {widthM} m en moyenne ({areaHa} ha)[ à {at}] reste entre les aires et n’appartient à aucune',
  'name-repeated':
    'le nom « {name} » est celui de deux aires ; faites une seule aire en plusieurs morceaux, ou donnez à chacune son nom',
  'area-without-name':
    'aires sans nom : {count} ; nommez-les dans la carte, ou dites avec --name-field quel champ contient les noms',
  // la carte et le carnet
  'area-name-near':
    'la carte dit « {value} », le carnet a « {suggestion} » ; écrivez le nom pareil des deux côtés, sinon les stations restent sans carte',
  'stratum-frozen':
    'la strate {area} a été figée le {frozenOn}[ avec {wasHa} ha] ; cette carte en ferait {becomesHa} ha : après cela seulement avec --accept "qui: pourquoi"',
  'stratum-all-masked':
    'les masques prennent tous les {wholeHa} ha de la strate {area} ; il ne reste rien où tirer des stations',
  'strata-drawn-late':
    'les contours de {areas} sont dessinés le {today}, après la première station de {survey} ({firstDate}) : dessinés après avoir vu des résultats ; chaque réponse par strate doit le dire',
  'area-from-map':
    'la strate {stratum} a été saisie avec {typedHa} ha et sa carte a {mapHa} ha ; la surface de la carte l’emporte',
  'station-outside-stratum':
    '{value}[ ({chart})] est à {distance} hors de la strate {stratum}[, dans {inside}][, dans {none} des strates de la carte] ; laquelle est juste, la position ou la strate[ : est-ce {suggestion}][, ou la position {correction}] ?',
  'station-outside-zone':
    '{value}[ ({chart})] est à {distance} hors de la zone {zone}[, dans {inside}] ; laquelle est juste, la position ou la zone[ : est-ce {suggestion}] ?',
  'station-on-mask':
    '{value}[ ({chart})] est à {distance} à l’intérieur {mask}, qui a été ôté de la carte comme {reason} ; est-ce la position qui est juste, ou la carte ?',
  'station-at-border':
    '{value} : {where} ; un récepteur ne distingue pas de tels mètres, et il n’y a rien à faire',
  'station-not-in-plan':
    'cette station est {value} du plan {plan} ; a-t-elle été tirée, ou choisie le jour même[ : est-ce {suggestion}] ?',
  'hand-picked-marked-random':
    'cette station est marquée {value}, mais {why} ; une station une fois choisie à la main reste {suggestion} : corrigez la marque, ou le plan',
} as const satisfies Record<keyof typeof mapWords, string>;
