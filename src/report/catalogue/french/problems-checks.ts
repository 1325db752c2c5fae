/** Ce que demandent les vérifications du soir : chacune une question en une phrase. */

import type { problemsChecks } from '../problems-checks.ts';

const misplaced = '{value}[ ({chart})] est à {distance} {reference}[, {outside}]';

export const problemsChecksFr = {
  'lost-but-empty':
    'cette bande est marquée {value} et aussi vide ; a-t-elle été prospectée sans rien voir, ou est-elle hors du comptage ?',
  'empty-with-reason':
    'cette bande est marquée parcourue et vide, avec la raison « {value} » ; a-t-elle été prospectée, ou est-elle {suggestion} ?',
  'transect-entered-twice':
    'les mêmes animaux avec les mêmes longueurs[, {animals} en tout,] sont aussi à {value} ; une fiche a-t-elle été saisie deux fois ?',
  'stations-alike':
    'la station {value}[ du {when}] a la même position au dernier chiffre près[, {position}] ; est-ce une seule station sous deux codes ?',
  'two-places-at-once':
    '{person} était à la station {value} au même moment[, de {from} à {to}] ; quelles heures ou quels noms sont justes ?',
  'ends-before-it-starts':
    'les heures {value} finissent avant de commencer ; lesquelles sont justes[, peut-être {suggestion}] ?',
  'day-month-exchanged':
    'la date {value} ne va pas avec cette campagne ; est-ce {suggestion}, jour et mois échangés ?',
  'date-in-future':
    'la date {value} n’est pas encore arrivée[ (nous sommes le {today})] ; quel jour était-ce ?',
  'date-outside-survey':
    'la date {value} est hors de cette campagne[, du {first} au {last}] ; est-elle juste[, ou était-ce {suggestion}] ?',
  'hemisphere-missing': `${misplaced} ; l’hémisphère a-t-il été oublié : {suggestion}[, ou {others}] ?`,
  'latitude-longitude-exchanged': `${misplaced} ; latitude et longitude échangées : {suggestion}[, ou {others}] ?`,
  'digits-exchanged': `${misplaced} ; chiffres intervertis : {suggestion}[, ou {others}] ?`,
  'minutes-for-seconds': `${misplaced} ; minutes et secondes prises pour des décimales : {suggestion}[, ou {others}] ?`,
  'far-from-plan': `${misplaced} ; la station a-t-elle été déplacée, et pourquoi ?`,
  'far-from-others': `${misplaced} ; cette position est-elle juste ?`,
  'position-same-as-plan':
    'la position {value} est celle du plan au dernier chiffre près ; a-t-elle été lue sur le récepteur, ou recopiée ?',
  'end-far-from-start':
    'la fin {value}[ ({chart})] est à {distance} du début ; lequel des deux est juste[ : la fin est-elle {suggestion}] ?',
  'boat-too-fast':
    'la station {value} est à {distance} et a été quittée {minutes} {minutes:minute|minutes} avant ; quelles heures ou positions sont justes ?',
  'random-without-plan':
    'cette station est marquée « au hasard » et n’a pas de position prévue[, comme {planned} des {of} stations tirées au hasard] ; a-t-elle été tirée, ou {suggestion} ?',
  'belt-length-unusual':
    'bandes de {value} m[ (bande {where})] là où {plannedM} m étaient prévus ; qu’est-ce qui a été prospecté[ : {suggestion} m] ?',
  'belt-width-unusual':
    'bandes larges de {value} m[ (bande {where})] là où {plannedM} m étaient prévus ; quelle était leur largeur[ : {suggestion} m] ?',
  'done-but-short':
    'bandes de {value} m[ (bande {where})] marquées parcourues là où {plannedM} m étaient prévus ; ont-elles été écourtées, et pourquoi[, ou est-ce {suggestion} m] ?',
  'more-transects-than-planned':
    '{value} {value:bande|bandes} là où {planned} {planned:était prévue|étaient prévues} ; la bande {last} appartient-elle à cette station ?',
  'fewer-transects-than-planned':
    '{value} {value:bande|bandes} là où {planned} {planned:était prévue|étaient prévues} ; les autres sont-elles perdues, pas faites, ou pas encore saisies ?',
  'depth-outside-stratum':
    'une profondeur de {value} m dans la strate {stratum}[, qui va {range}] ; est-ce la profondeur qui est juste, ou la strate ?',
  'cover-not-whole':
    'la couverture du fond fait {value} % en tout ; que manque-t-il, ou qu’est-ce qui est compté deux fois ?',
  'species-outside-depth':
    '{species} à {value} m[ (bande {transect}, {count} {count:compté|comptés})], mais on la connaît {range} ; est-ce bien cette espèce ?',
  'species-outside-habitat':
    '{species} dans {value}[ (strate {stratum} : {where})], mais on la connaît dans {habitats} ; est-ce bien cette espèce, ou la liste est-elle incomplète ?',
  'length-unit-slip':
    '{value} mm[ et {more} {more:autre|autres}], mais {species} va de {least} à {most} mm ; saisi en {unit} ? {suggestion} ?',
  'length-outside-range':
    '{value} mm[ et {more} {more:autre|autres}], mais {species} va[ de {least}][ à {most}] mm ; est-ce mesuré ainsi ?',
  'count-stopped-at-cap':
    '{value} des {dense} comptages de {cap} animaux ou plus s’arrêtent juste à {cap}, tous mesurés[ ({where})] ; le comptage après la dernière longueur a-t-il été oublié ?',
  'count-outlier':
    '{value} {species} ici, là où les {others} autres stations de {stratum} en laissent attendre {upper} au plus ; le comptage est-il juste ?',
  'digit-preference':
    '{value} des {lengths} longueurs[ de {recorder}] finissent par 0 ou 5, là où 20 % sont attendues ; ont-elles été mesurées ou arrondies ?',
  'planned-not-visited':
    'sur {of} {of:station prévue|stations prévues} du plan {plan}, {missed} {missed:n’a été ni visitée ni remplacée|n’ont été ni visitées ni remplacées} : {value} ; dites pourquoi dans le plan, ou prenez des remplaçantes, car leurs strates ont moins de stations que prévu',
} as const satisfies Record<keyof typeof problemsChecks, string>;
