/** Ce que les estimations doivent demander avant qu’on puisse les croire. */

import type { problemsSurvey } from '../problems-survey.ts';

export const problemsSurveyFr = {
  'stratum-area-missing':
    'la surface de la strate {stratum} n’est pas connue ; donnez ses hectares, et tout le secteur pourra être estimé',
  'station-unresolved':
    'rien n’est écrit pour cette station ; a-t-elle été prospectée sans rien voir, perdue, ou jamais faite ?',
  'transect-unresolved':
    'cette bande n’est pas remplie ; a-t-elle été prospectée sans rien voir, perdue, ou jamais faite ?',
  'partial-without-reason':
    'cette bande a été écourtée[ à {value} m], sans raison écrite ; est-ce à cause de ce qui y a été trouvé ?',
  'lone-station-in-stratum':
    'la strate {stratum} a une seule station, qui donne une moyenne sans dispersion ; peut-elle être réunie à une strate semblable ?',
  'counted-but-no-target':
    '{species} a été comptée mais n’est pas dans la liste de ce qui était cherché ; a-t-elle été cherchée à chaque station ?',
  'targets-assumed':
    'aucune liste d’espèces cherchées n’a été donnée ; sont prises comme cherchées : {species}',
  'selection-unknown':
    'personne n’a écrit comment les stations ont été choisies[ ({stations} {stations:station|stations} sur {of})] ; elles sont traitées comme tirées au hasard',
  'selection-mixed':
    'stations tirées au hasard et stations choisies à la main sont mêlées[ ({random} et {handPicked})] ; seules les premières parlent pour le secteur',
  'station-small-area':
    'cette station a prospecté {areaM2} m² sur {plannedM2} m² prévus ; peut-elle encore représenter son lieu ?',
} as const satisfies Record<keyof typeof problemsSurvey, string>;
