/** Pourquoi une densité n’est pas comparée à une autre, et pourquoi aucune prise ne peut être calculée. */

import type { reasonsAdvice } from '../reasons-advice.ts';

export const reasonsAdviceFr = {
  'survey-methods-mixed':
    'En suspens : cette campagne mêle des façons de compter ({methods}) ; une densité publiée ne parle que d’une seule',
  'reference-method-unknown':
    'En suspens : rien ne dit comment ont été comptés les animaux de cette densité ; rien ne peut donc lui être comparé',
  'reference-other-method':
    'En suspens : cette densité a été comptée par {reference}, la campagne par {survey} ; ce que l’une trouve ne dit rien de ce que l’autre aurait trouvé',
  'reference-other-width':
    'Les bandes de cette densité avaient {referenceM} m de large, celles de la campagne {surveyM} m : sur des bandes larges, les petits animaux échappent plus facilement',
  'no-spread':
    'Aucune dispersion ne peut être donnée pour {where} ; on ne peut donc rien dire de la probabilité d’être au-dessous',
  'no-size-limit':
    'Aucune taille limite de {species} n’est dans le carnet, et aucune n’est supposée : apportez le barème national (tableau limits), ou donnez --limit en millimètres, ou --limit none là où toute taille peut être prise',
  'no-mean-weight':
    'Aucun poids de {species} n’est connu ; la prise est donc donnée en animaux seulement : pesez des animaux, ou donnez --mean-weight "0.52 kg: source"',
  'no-legal-animals':
    'Aucun animal mesuré de {species} n’atteignait {limitMm} mm : rien de taille légale n’a été vu',
  'area-unknown': 'La surface de {where} n’est pas connue ; il n’y a donc pas de stock dont prendre une part',
} as const satisfies Record<keyof typeof reasonsAdvice, string>;
