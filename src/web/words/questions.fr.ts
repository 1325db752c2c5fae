import type { questionsEn } from './questions.en.ts';

export const questionsFr: typeof questionsEn = {
  title: 'Questions',
  open: (n) => (n === 1 ? '1 question attend une réponse' : `${n} questions attendent une réponse`),
  none: 'Aucune question n’est ouverte. Ce que disent les comptages se trouve sous Réponses.',
  offline:
    'Le programme qui tient le carnet ne répond pas. Ces questions sont celles qu’il a posées en dernier ; une réponse donnée maintenant attend sur cet ordinateur.',
  notSeen:
    'Le programme qui tient le carnet ne répond pas, et ce navigateur n’a pas encore vu les questions. Elles viendront d’elles-mêmes quand il tournera.',
  keys: 'Les flèches vont de question en question ; o ouvre la fiche, a répond, h montre l’historique.',
  show: 'Montrer',
  shows: {
    all: 'tout',
    stop: 'seulement ce qui retient des réponses',
    explain: 'ce qui attend une réponse',
    note: 'les remarques',
  },
  severity: { stop: 'à corriger', explain: 'attend une réponse', note: 'remarque' },
  wholeSurvey: 'La campagne entière',
  station: (code) => `Station ${code}`,
  belt: (code) => `bande ${code}`,
  swim: (swim) => `passage ${swim}`,
  sheet: 'Corriger sur la fiche',
  sheetOf: (what) => `Corriger sur la fiche : ${what}`,
  answer: 'Répondre',
  answerTo: (what) => `Répondre : ${what}`,
  noneSeen: 'Fouillée, rien vu',
  noneSeenAnswer: 'rien vu',
  noneSeenText: '« rien vu » marque ainsi les bandes vides, du même geste.',
  yourAnswer: 'Votre réponse',
  why: 'Pourquoi, ou d’où vous le savez',
  who: 'Qui répond',
  give: 'Écrire la réponse dans le carnet',
  leave: 'Laisser',
  needed: 'une réponse demande quoi, pourquoi et qui',
  keptHere: 'La réponse est enregistrée sur cet ordinateur et entre dans le carnet dès qu’il répond.',
  notKept:
    'Ce navigateur n’a pas pu garder la réponse : elle n’est pas enregistrée. Elle reste ici ; réessayez.',
  waits: 'Attend le carnet.',
  waiting: (n) =>
    n === 1
      ? '1 réponse est enregistrée sur cet ordinateur et attend le carnet.'
      : `${n} réponses sont enregistrées sur cet ordinateur et attendent le carnet.`,
  needYou: (n) =>
    n === 1
      ? '1 réponse a besoin de vous avant que le carnet puisse la prendre.'
      : `${n} réponses ont besoin de vous avant que le carnet puisse les prendre.`,
  waitingTitle: 'Réponses pas encore dans le carnet',
  waitingColumns: { question: 'Question', answer: 'Réponse', given: 'Donnée', state: 'Où elle est' },
  states: {
    waiting: 'enregistrée sur cet ordinateur, attend le carnet',
    conflict: 'quelqu’un d’autre a répondu entre-temps : choisir',
    refused: 'le carnet ne peut pas la prendre',
  },
  conflictText: 'Rien n’a été remplacé. Si vous écrivez la vôtre, l’autre reste dans l’historique.',
  yours: 'La vôtre',
  theirs: 'Dans le carnet',
  keepMine: 'Écrire la vôtre dans le carnet',
  keepTheirs: 'Garder celle du carnet',
  drop: 'Abandonner cette réponse',
  given: (n, marked) => {
    const answers = n === 1 ? 'La réponse est' : `${n} réponses sont`;
    const belts = marked === 1 ? '1 bande est marquée' : `${marked} bandes sont marquées`;
    return `${answers} dans le carnet${marked === 0 ? '' : ` ; ${belts} « rien vu »`}.`;
  },
  onlyCorrect: 'Ici une réponse ne suffit pas : c’est l’enregistrement même qu’il faut corriger.',
  answered: (n) => (n === 1 ? '1 question a sa réponse' : `${n} questions ont leur réponse`),
  answeredBy: (who, at) => `${who}, ${at}`,
  because: (why) => `parce que : ${why}`,
  again: 'Répondre à nouveau',
  historyButton: 'Historique',
  historyOf: (what) => `Historique : ${what}`,
  history: {
    title: 'Historique',
    text: 'Chaque enregistrement tel qu’il a été écrit et changé, le plus récent d’abord. Rien n’est jamais remplacé sans trace.',
    back: 'Retour aux questions',
    link: 'Historique de chaque enregistrement',
    station: 'Station',
    all: 'la campagne entière',
    none: 'Rien n’a encore été écrit qui corresponde.',
    unreachable: 'L’historique demande le programme qui tient le carnet ; il ne répond pas en ce moment.',
    older: (n) =>
      n === 1
        ? '1 changement plus ancien n’est pas montré.'
        : `${n} changements plus anciens ne sont pas montrés.`,
    what: { entered: 'saisi', changed: 'changé', withdrawn: 'retiré' },
    line: (what, table, record) => `${what} : ${table} ${record}`,
    by: (who, why, device) => `${who}, ${device} : ${why}`,
    nothing: 'vide',
    yes: 'oui',
    no: 'non',
    clock: 'l’horloge de cet appareil retardait',
    names: {
      surveys: 'campagnes',
      strata: 'strates',
      stations: 'stations',
      transects: 'bandes',
      counts: 'comptages',
      lengths: 'longueurs',
      answers: 'réponses',
      days: 'journées',
      station: 'station',
      stratum: 'strate',
      transect: 'bande',
      swim: 'passage',
      species: 'espèce',
      count: 'nombre',
      'none seen': 'rien vu',
      status: 'état',
      reason: 'raison',
      'length m': 'longueur m',
      'width m': 'largeur m',
      answer: 'réponse',
      why: 'pourquoi',
      who: 'qui',
      note: 'note',
      date: 'date',
    },
    fields: (n) => (n === 1 ? '1 champ' : `${n} champs`),
  },
};
