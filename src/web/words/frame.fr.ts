import type { frameEn } from './frame.en.ts';

export const frameFr: typeof frameEn = {
  rooms: {
    plan: 'Plan',
    day: 'Journée',
    sheets: 'Fiches',
    questions: 'Questions',
    answers: 'Réponses',
    papers: 'Documents',
  },
  roomsLabel: 'Rubriques',
  survey: 'Campagne',
  noSurvey: 'aucune campagne',
  language: 'Langue',
  languages: { en: 'English', fr: 'Français' },
  theme: 'Lumière',
  themes: { paper: 'papier', night: 'nuit', sun: 'plein soleil' },
  choices: 'Réglages',
  who: 'Qui saisit',
  whoHint: 'un rôle, comme « Saisie A »',
  invented: 'Tout est inventé dans ce carnet : îles, personnes, animaux.',
  toContent: 'Aller à la page',
  inBookSince: (time) => `Tout ce qui a été saisi ici est dans le carnet (dernier enregistrement ${time}).`,
  inBook: 'Tout ce qui a été saisi ici est dans le carnet.',
  serverGone: 'Le programme qui tient le carnet ne répond pas. La saisie peut continuer.',
  waiting: (sheets) =>
    sheets === 1
      ? '1 fiche est enregistrée sur cet ordinateur et attend le carnet.'
      : `${sheets} fiches sont enregistrées sur cet ordinateur et attendent le carnet.`,
  needsYou: (sheets) =>
    sheets === 1
      ? '1 fiche a besoin de vous avant que le carnet puisse la prendre.'
      : `${sheets} fiches ont besoin de vous avant que le carnet puisse les prendre.`,
  notPersistent:
    'Ce navigateur peut effacer ce qu’il garde quand le disque est plein. Ne laissez pas de fiches attendre des jours.',
  colon: '\u00a0:',
  reading: 'Lecture du carnet …',
  unreadable:
    'Le programme qui tient le carnet a répondu d’une façon que ces écrans ne connaissent pas. Ils sont d’une autre version : rechargez la page ; rien de ce qui attend n’est perdu.',
  nothingKept:
    'Le programme qui tient le carnet ne répond pas, et ce navigateur n’a pas encore vu le carnet. Démarrez-le :',
  dayCell: {
    two: (un, autre) => `${un} ou ${autre} ? Écrivez le mois par son nom.`,
    none: (texte) => `« ${texte} » ne se lit pas comme un seul jour. Écrivez-le comme 2026-09-30 ou 30 sept.`,
  },
  start: {
    title: 'Trois entrées',
    demo: 'Visiter le carnet de démonstration',
    demoText:
      'Trois campagnes dans des îles qui n’existent pas. On ne peut rien y casser. Dans un nouveau terminal :',
    demoHere:
      'Vous y êtes : des campagnes dans des îles qui n’existent pas. On ne peut rien y casser. La dernière :',
    newSurvey: 'Commencer une campagne',
    newSurveyText:
      'La nommer, choisir comment une station est faite, noter les strates. Puis saisir la première fiche.',
    newSurveyButton: 'Nouvelle campagne',
    import: 'Apporter des tableaux existants',
    importText:
      'Des fichiers CSV ou un XLSX, comme le décrit le manuel. Pour l’instant en ligne de commande :',
    surveys: 'Campagnes de ce carnet',
    stations: (n) => `${n} ${n > 1 ? 'stations' : 'station'}`,
  },
  newSurvey: {
    title: 'Nouvelle campagne',
    name: 'Nom de la campagne',
    starts: 'Premier jour',
    protocol: 'Comment une station est faite',
    numbers: {
      transectsPerStation: 'Bandes par station',
      lengthM: 'Longueur d’une bande, m',
      widthM: 'Largeur d’une bande, m',
      gapM: 'Intervalle entre bandes, m',
      measureFirst: 'Mesurer les … premiers d’une espèce sur une bande, puis compter',
    },
    strata: 'Strates, une par ligne : nom, surface en ha si connue',
    stratumExample: 'platier, 420',
    species: 'Espèces cherchées, une par ligne : nom, code, nom local',
    speciesExample: 'Holothuria scabra, HSC, holothurie de sable',
    make: 'Créer la campagne',
    cancel: 'Annuler',
    asBefore: (campagne) => `comme dans ${campagne}`,
    asks: {
      name: 'La campagne doit avoir un nom.',
      stratum: 'Au moins une strate, sinon aucune station n’a de place.',
      number: (nom, texte) =>
        `${nom} : « ${texte} » n’est pas un nombre ici ; écrivez par exemple 40 ou 1,5.`,
      area: (ligne, texte) =>
        `Strates, ligne ${ligne} : « ${texte} » n’est pas une surface en hectares. Écrivez un nombre, comme 420 ou 420,5, sans signe entre les milliers.`,
      twice: (ligne, texte) => `Strates, ligne ${ligne} : « ${texte} » y figure deux fois.`,
      otherArea: (nom, surface) =>
        `Le carnet a « ${nom} » ${surface === null ? 'sans surface' : `avec ${String(surface).replace('.', ',')} ha`}, pour toutes les campagnes. Écrivez la même, ou donnez un nom propre au nouveau terrain ; une surface se change en apportant un tableau de strates ou une carte.`,
    },
    offline: 'Une nouvelle campagne a besoin du programme qui tient le carnet ; il ne répond pas.',
    protocols: {
      'belts in series': 'bandes en série, l’une après l’autre',
      'belts in parallel': 'bandes parallèles, côte à côte',
      quadrats: 'quadrats',
      'timed search': 'recherche chronométrée',
    },
  },
  noSurveyYet: 'Choisissez d’abord une campagne.',
  plan: {
    title: 'Plan',
    text: 'Combien de stations, lesquelles, où se trouve chaque bande. En attendant cet écran, en ligne de commande :',
  },
  papers: {
    title: 'Documents',
    text: 'Le rapport de cette campagne, fait avec ce que le carnet contient maintenant. Il s’ouvre dans un nouvel onglet et s’imprime.',
    open: 'Ouvrir le rapport',
    positions: 'Positions des stations',
    positionWords: { rounded: 'arrondies', exact: 'exactes', none: 'absentes' },
    tables: 'Tous les tableaux du carnet, pour d’autres programmes :',
    offline: 'Le rapport a besoin du programme qui tient le carnet ; il ne répond pas.',
  },
};
