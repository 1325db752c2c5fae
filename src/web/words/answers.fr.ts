import type { answersEn } from './answers.en.ts';

export const answersFr: typeof answersEn = {
  title: 'Réponses',
  report: 'Ouvrir le rapport',
  what: 'Quoi',
  whats: { densities: 'Densités', sizes: 'Tailles' },
  by: 'Une réponse par',
  bys: { survey: 'campagne', stratum: 'strate', site: 'site', zone: 'zone', station: 'station' },
  surveys: 'Campagnes',
  thisSurvey: 'cette campagne',
  allSurveys: 'toutes celles du carnet',
  species: 'Espèce',
  allSpecies: 'toutes les espèces',
  place: 'Lieu',
  allPlaces: 'tous les lieux',
  order: 'Ordre',
  orders: {
    name: 'par espèce',
    most: 'la plus dense d’abord',
    surest: 'la mieux connue d’abord',
    place: 'par lieu',
  },
  limit: 'Part d’au moins, mm',
  offline:
    'Le programme qui tient le carnet ne répond pas. Ces réponses sont celles de la dernière fois où il a répondu.',
  basis: {
    here: (at, since, waits) =>
      `Calculé sur cet ordinateur d’après le carnet tel qu’il était à ${at}${since}${waits}.`,
    since: (n) => (n === 1 ? ', 1 fiche envoyée depuis' : `, ${n} fiches envoyées depuis`),
    waits: (sheets, answers) => {
      const all = [
        ...(sheets === 0 ? [] : [sheets === 1 ? '1 fiche' : `${sheets} fiches`]),
        ...(answers === 0 ? [] : [answers === 1 ? '1 réponse' : `${answers} réponses`]),
      ];
      return ` et ${all.join(' et ')} qui ${sheets + answers === 1 ? 'attend' : 'attendent'}`;
    },
    leftOut: (n) =>
      n === 1
        ? 'Ce qui a besoin de vous avant que le carnet le prenne n’y est pas (1).'
        : `Ce qui a besoin de vous avant que le carnet le prenne n’y est pas (${n}).`,
  },
  surveysNotSeen: (n) =>
    n === 1
      ? 'Ce navigateur n’a pas encore vu les réponses d’une campagne ; elle n’est pas montrée.'
      : `Ce navigateur n’a pas encore vu les réponses de ${n} campagnes ; elles ne sont pas montrées.`,
  interval: 'Intervalle',
  intervals: {
    clumped: 'animaux agrégés (habituel)',
    lognormal: 'log-normal',
    t: 'symétrique (t de Student)',
    percentile: 'stations tirées de nouveau, percentiles',
    bca: 'stations tirées de nouveau, BCa',
  },
  confidence: 'Valable dans',
  confidencePercent: (percent) => `${percent} % des campagnes`,
  notSeen:
    'Le programme qui tient le carnet ne répond pas, et ce navigateur n’a pas encore vu ces réponses. Elles viendront d’elles-mêmes quand il tournera.',
  empty:
    'Il n’y a pas encore de réponse : aucune espèce n’est cherchée dans cette campagne, ou aucune fiche n’a été saisie. Saisissez la première sous Fiches.',
  noneChosen: 'Rien ne correspond à ce choix. Prenez toutes les espèces et tous les lieux pour tout voir.',
  held: (n) => (n === 1 ? '1 réponse est en suspens' : `${n} réponses sont en suspens`),
  heldText: 'Aucun nombre n’est donné tant que la raison n’est pas éclaircie.',
  accept: {
    open: 'Continuer malgré cela',
    text: 'Les nombres sont alors donnés avec votre nom et votre raison à côté. Cela vaut sur cet écran jusqu’à ce que vous le quittiez ; le rapport et les questions restent comme ils sont.',
    who: 'Qui en répond',
    why: 'Pourquoi',
    give: 'Donner les nombres',
    needed: 'Qui en répond, et pourquoi ? Les deux sont imprimés avec le résultat.',
    given: (who, why) => `Réponses en suspens, données quand même par ${who}, pour cette raison : ${why}`,
    back: 'Les remettre en suspens',
  },
  toQuestions: 'Aux questions',
  bandsTitle: 'Animaux par hectare',
  bandsText:
    'Plus le bandeau est sombre, plus les comptages appuient cette densité. Le grand trait est l’estimation, les traits fins sont les bornes de l’intervalle. Là où rien n’a été observé, le bandeau s’efface à partir de zéro ; le trait pointillé est la borne si les animaux sont dispersés, le trait plein s’ils sont agrégés.',
  axis: (even) => `animaux par hectare : régulier jusqu’à ${even}, puis chaque pas multiplie`,
  perHa: (value) => `${value} par ha`,
  between: (percent, low, high) => `${percent} % : ${low} à ${high}`,
  noSpread: 'on ne sait pas de combien cela peut s’écarter',
  notRecorded: 'non observée',
  below: (percent, bound) => `${percent} % : moins de ${bound} par ha`,
  stations: (withSpecies, all, animals) =>
    `à ${several(withSpecies, 'station')} sur ${all}, ${animals} ${animals === '1' ? 'animal' : 'animaux'}`,
  atNone: (all, area) =>
    `${all === '1' ? 'pas à la seule station' : `à aucune station sur ${all}`}, ${area} m² prospectés`,
  withCv: (seen, percent) => `${seen} ; CV\u00a0${percent}\u00a0%`,
  stock: (animals, low, high, area) => `stock ${animals} (${low} à ${high}) sur ${area}\u00a0ha`,
  stockBelow: (bound, area) => `stock de moins de ${bound} sur ${area}\u00a0ha`,
  origin: 'D’où vient ce nombre ?',
  originOf: (what) => `D’où vient ce nombre : ${what}`,
  remarks: (n) => (n === 1 ? '1 remarque' : `${n} remarques`),
  leftOut: (reason) => `Laissé de côté : ${reason}`,
  ofAll: 'Pour toutes les réponses montrées',
  leftOutOfAll: (n) =>
    n === 1
      ? '1 bande ou station en est laissée de côté'
      : `${n} bandes ou stations en sont laissées de côté`,
  ofPlaces: (n) =>
    n === 1
      ? 'Remarques sur toutes les réponses d’un lieu'
      : `Remarques valables pour tout un lieu (${n} lieux)`,
  sizesTitle: 'Longueurs',
  sizesText:
    'Longueurs étendues aux animaux comptés : chaque barre est la part d’une classe de 20 mm. Hauteurs et millimètres sont les mêmes pour toutes les lignes.',
  mean: (mm, se) => `moyenne ${mm} mm (erreur type ${se} mm)`,
  meanOnly: (mm) => `moyenne ${mm} mm`,
  middle: (p10, p50, p90) => `la moitié jusqu’à ${p50} mm ; 8 sur 10 de ${p10} à ${p90} mm`,
  measured: (measured, animals) =>
    `${several(measured, 'mesuré')} sur ${animals} ${animals === '1' ? 'animal' : 'animaux'}`,
  atLeast: (limit, share) => `${share} % d’au moins ${limit} mm`,
  atLeastBetween: (percent, low, high) => ` (${percent} % : ${low} à ${high} %)`,
  borrowed: (animals) =>
    `longueurs empruntées à d’autres stations pour ${animals} ${animals === '1' ? 'animal' : 'animaux'}`,
  barsInWords: (what) => `parts des classes de longueur, ${what}`,
  table: 'Tableau',
  tableText:
    'Tous les chiffres, comme d’autres programmes les lisent (point décimal). Une case vide est inconnue, jamais zéro.',
  copy: 'Copier le tableau',
  copied: (rows) => (rows === 1 ? '1 ligne copiée.' : `${rows} lignes copiées.`),
  notCopied:
    'Le navigateur n’a pas laissé copier le tableau ; il est marqué ci-dessous : copiez-le à la main.',
  version: (version) => `version des données ${version}`,
  from: {
    back: 'Retour aux réponses',
    title: (species) => `D’où vient le nombre de ${species}`,
    sum: (animals, area, stations, withSpecies) =>
      `${animals} ${animals === '1' ? 'animal' : 'animaux'} sur ${area} m², à ${several(stations, 'station')} où l’espèce a été cherchée ; vue à ${withSpecies}.`,
    rule: 'L’unité est la station : ses animaux sur sa surface prospectée. Chaque strate pèse selon sa surface sur la carte, jamais selon le nombre de passages du bateau. Les bandes perdues et celles où l’espèce n’a pas été cherchée ne comptent ni d’un côté ni de l’autre.',
    outside: (n) =>
      n === 1 ? '1 station n’est pas dans le nombre :' : `${n} stations ne sont pas dans le nombre :`,
    station: 'Station',
    stratum: 'Strate',
    date: 'Jour',
    strip: 'Bandes',
    animals: 'Animaux',
    area: 'Prospecté, m²',
    density: 'Par ha',
    open: (code) => `Bandes et animaux de ${code}`,
    sheet: 'Ouvrir la fiche',
    beltColumn: 'Bande',
    state: 'État',
    count: 'Comptés',
    lengths: 'Chaque animal mesuré, mm',
    more: (n) => `et ${n} comptés sans longueur`,
    swim: (swim) => `, passage ${swim}`,
    none: 'Aucune station de cette campagne ne correspond.',
  },
  stationStates: {
    observed: 'cherchée',
    'not looked for': 'non cherchée',
    lost: 'perdue',
    unresolved: 'non remplie : attend une réponse',
  },
  beltStates: {
    counted: 'comptée',
    zero: 'prospectée, rien vu',
    'not looked for': 'non cherchée',
    lost: 'perdue ou non faite',
    unresolved: 'non remplie : attend une réponse',
    'later swim': 'passage suivant, hors du nombre',
  },
};

/** What one has is said in the singular. */
function several(n: string, what: string): string {
  return `${n} ${what}${n === '0' || n === '1' ? '' : 's'}`;
}
