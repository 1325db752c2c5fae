import type { dayEn } from './day.en.ts';

export const dayFr: typeof dayEn = {
  title: 'Journée',
  date: 'Jour du bateau',
  days: 'Jours où quelque chose est écrit',
  stations: 'Stations visitées',
  noStations: 'Aucune fiche de ce jour n’a encore été saisie.',
  typeSheet: 'Saisir une fiche',
  columns: {
    station: 'Station',
    stratum: 'Strate',
    times: 'Heures',
    animals: 'Animaux',
    measured: 'Mesurés',
    state: 'Ce soir',
  },
  times: (from, to) => `${from} à ${to}`,
  done: 'fini',
  missing: 'Ce qui manque encore ce soir',
  missingNone: 'Rien ne manque sur les fiches de ce jour.',
  missingOnlyHere: (n) =>
    n === 1
      ? '1 fiche n’est que sur cet ordinateur et manque dans cette liste.'
      : `${n} fiches ne sont que sur cet ordinateur et manquent dans cette liste.`,
  conditions: 'Comment s’est passée la journée',
  sea: 'Mer',
  seaHint: 'comme « peu agitée, houle du sud-est »',
  visibility: 'Visibilité sous l’eau, m',
  habitat: 'Habitat',
  fuel: 'Carburant, litres',
  notes: 'Notes',
  incidents: 'Incidents',
  incidentsNone: 'Aucun n’est écrit. Notez aussi ce qui a failli arriver.',
  time: 'Heure',
  what: 'Ce qui est arrivé',
  addIncident: 'Un incident',
  dives: 'Plongées',
  safety:
    'Les temps sont additionnés et comparés aux limites saisies ici ; rien d’autre n’est calculé, et aucune décompression. Les règles locales et le chef de plongée priment, aussi sur tout ce que montre cet écran.',
  diver: 'Plongeur',
  diverHint: 'un rôle, comme « Plongeur 1 »',
  entry: 'Entrée',
  exit: 'Sortie',
  depth: 'Profondeur max., m',
  addDive: 'Une plongée',
  remove: 'Enlever',
  removeDive: (line) => `Enlever la plongée ${line}`,
  removeIncident: (line) => `Enlever l’incident ${line}`,
  diveLine: (line) => `Plongée ${line}`,
  incidentLine: (line) => `Incident ${line}`,
  limits: 'Limites',
  limitsText:
    'Tirées des règles de plongée de votre service, saisies par vous. Une limite vide n’est pas comparée.',
  limitsFrom: (date) => `Reprises du ${date}. Vérifiez qu’elles valent encore.`,
  limitNames: {
    divesPerDay: 'Plongées par jour, au plus',
    minutesPerDay: 'Minutes sous l’eau par jour, au plus',
    surfaceIntervalMin: 'Minutes entre deux plongées, au moins',
    maxDepthM: 'Profondeur, m, au plus',
  },
  sums: 'Chaque plongeur aujourd’hui',
  sumColumns: {
    diver: 'Plongeur',
    dives: 'Plongées',
    minutes: 'Minutes',
    deepest: 'Profondeur max., m',
    between: 'Intervalle le plus court, min',
  },
  within: 'dans les limites saisies',
  noLimits: 'aucune limite saisie : rien n’est comparé',
  cautions: {
    overlap: (diver) => `${diver} est deux fois sous l’eau en même temps ; quelles heures sont justes ?`,
    noDepth: (diver) =>
      `${diver} a une plongée sans profondeur : la limite de profondeur n’y est pas comparée.`,
    noLimit: 'Des plongées sont écrites, mais aucune limite n’est saisie : rien n’est comparé.',
  },
  unread: {
    number: (name, value) => `${name} : « ${value} » n’est pas un nombre de zéro ou plus`,
    dive: (line) => `la plongée ${line} demande son plongeur et des heures d’entrée et de sortie comme 0810`,
    incident: (line) => `l’incident ${line} demande ce qui est arrivé, et une heure comme 0810 ou aucune`,
  },
  who: 'Qui écrit la journée',
  needWho: 'écrivez qui écrit la journée (un rôle)',
  save: 'Enregistrer la journée',
  saved: {
    nothing: 'Rien n’est encore écrit pour ce jour.',
    book: 'Cette journée est dans le carnet telle que vous la voyez.',
    bookSince: (time) => `Dans le carnet depuis ${time}.`,
    draft: 'Changée, non enregistrée : le brouillon n’est gardé que dans ce navigateur.',
    waiting:
      'Enregistrée sur cet ordinateur, elle attend le carnet. Elle part d’elle-même quand le carnet répond.',
    stuck: 'Enregistrée sur cet ordinateur ; le carnet ne l’a pas prise. Voir plus haut.',
    lost: 'Ce navigateur ne garde rien : le brouillon n’est que sur cet écran.',
    notKept:
      'Ce navigateur n’a pas pu garder la journée : elle n’est pas enregistrée. Réessayez pendant que le carnet répond.',
  },
  foundDraft: (time) => `Des changements de ${time} non enregistrés ont été retrouvés ; ils sont montrés.`,
  dropDraft: 'Les jeter',
  conflict: {
    title: 'Quelqu’un d’autre a enregistré cette journée entre-temps',
    text: 'Rien n’a été remplacé. Regardez les deux et choisissez ; ce que vous ne choisissez pas reste dans l’historique.',
    field: 'Quoi',
    mine: 'Le vôtre',
    theirs: 'Dans le carnet',
    keepMine: 'Écrire le vôtre dans le carnet',
    takeTheirs: 'Garder ce qu’a le carnet',
    empty: 'vide',
  },
  strata: 'Jusqu’ici, strate par strate',
  strataText: 'La campagne entière, pas seulement ce jour. CV : l’erreur type divisée par la densité.',
  strataOffline: 'État de la dernière fois que le carnet a répondu.',
  species: 'Espèce',
  strataColumns: {
    stratum: 'Strate',
    stations: 'Stations',
    today: 'ce jour',
    seenAt: 'Vue à',
    density: 'Par ha',
    interval: '95 %',
    cv: 'CV',
  },
  noNumbers:
    'Pas encore de nombre : des fiches manquent, ou le carnet n’a pas répondu depuis qu’elles ont été saisies.',
  below: (bound) => `moins de ${bound}`,
  between: (low, high) => `${low} à ${high}`,
  notRecorded: 'non notée',
  waitingDays: (n) =>
    n === 1
      ? '1 journée est enregistrée sur cet ordinateur et attend le carnet.'
      : `${n} journées sont enregistrées sur cet ordinateur et attendent le carnet.`,
  daysNeedYou: (n) =>
    n === 1
      ? '1 journée a besoin de vous avant que le carnet puisse la prendre.'
      : `${n} journées ont besoin de vous avant que le carnet puisse les prendre.`,
};
