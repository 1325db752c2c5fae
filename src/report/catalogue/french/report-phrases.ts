/** Les phrases du rapport qui contiennent des nombres ou des noms, et les têtes de ses tableaux. */

import { counted } from '../../../survey/counted.ts';
import type { ReportPhrases } from '../report-phrases.ts';
import { spacedText } from './typography.ts';

const s = spacedText;

export const reportPhrasesFr: ReportPhrases = {
  page: {
    title: (book, survey) => s(`${book} : ${survey}`),
    madeOn: (on, version, data) => `Fait le ${on} avec Slateline ${version}, version des données ${data}.`,
    madeAsOf: (made, moment) =>
      s(`${made} Le carnet y est tel qu’il était le ${moment} ; ce qui a été écrit depuis n’y est pas.`),
    asOf: (moment) => s(`Le carnet tel qu’il était le ${moment}`),
    foot: (title, made) => `${title}, ${made}`,
    decision: (decision) => s(`La décision : ${decision}`),
    targets: (made, species) => s(`${made} : ${species}.`),
  },
  answer: {
    strata: (n, one) => `${n} ${one ? 'strate' : 'strates'}`,
    inStrata: (strata) => `Dans ${strata}`,
    inArea: (areaHa, strata) => `Sur ${areaHa} ha de ${strata}`,
    stations: (n, one) => `${n} ${one ? 'station a été visitée' : 'stations ont été visitées'}`,
    days: (n, one) => `${n} ${one ? 'jour' : 'jours'}`,
    workDone: (where, stations, days, areaM2) =>
      `${where}, ${stations} en ${days} et ${areaM2} m² ont été prospectés.`,
    asked: (n, parts) => `Sur ${counted(n, 'espèce recherchée', 'espèces recherchées')}, ${parts}.`,
    estimated: (n, one) => `${n} ${one ? 'a' : 'ont'} une estimation`,
    zero: (n, one) =>
      `${n} ${one ? 'a été recherchée sans être observée' : 'ont été recherchées sans être observées'}`,
    open: (n, one) => `${n} ${one ? 'n’a' : 'n’ont'} pas encore de réponse, pour la raison qui l’accompagne`,
    fewStations: (species) =>
      s(
        `Observées à moins de 10 stations, si bien que l’incertitude réelle peut être plus grande que l’intervalle : ${species}.`,
      ),
  },
  density: {
    wholeInWords: (n) => `Densités sur l’ensemble du secteur, ${counted(n, 'espèce')}`,
    whole: (survey) => `Ensemble du secteur, ${survey}`,
    areaUnknown: 'surface inconnue',
    speciesInWords: (species, n) => s(`${species} : densités dans ${counted(n, 'strate')}`),
    byStratum: (survey) => `Par strate, ${survey}`,
    stratumByStratum: 'Strate par strate',
    bySurvey: 'Densités campagne par campagne',
  },
  heads: {
    species: 'Espèce',
    stratum: 'Strate',
    survey: 'Campagne',
    animals: 'Animaux',
    measured: 'Mesurés',
    meanMm: 'Moyenne, mm',
    errorMm: 'Erreur type, mm',
    halfBelowMm: 'Médiane, mm',
    limitMm: 'Limite, mm',
    atLeastLimit: 'Atteignent la limite',
    day: 'Jour',
    stations: 'Stations',
    which: 'Lesquelles',
    areaHa: 'Surface, ha',
    days: 'Jours',
    beltsSearched: 'Bandes prospectées',
    lost: 'Perdues ou pas faites',
    blank: 'Blanches',
    searchedM2: 'Prospecté, m²',
  },
  unknown: 'inconnu',
  sizes: {
    inWords: (species, sizes) => s(`Longueurs de ${species} : ${sizes}`),
    caption: (survey) => `Longueurs, ${survey}`,
    length: 'longueur',
    measures: {
      'body relaxed': 'longueur du corps, détendu',
      'body contracted': 'longueur du corps, contracté',
      'basal diameter': 'diamètre de la base',
      'shell length': 'longueur de la coquille',
    },
    noLimit: 'non donnée',
    notListed: 'une espèce hors de la liste',
    limits: (source, told) => s(`Limites, ${source} : ${told}.`),
    borrowed: (species, some, all) =>
      s(
        `${species} : ${counted(some, 'animal', 'animaux')} sur ${all} ${some === '1' ? 'était' : 'étaient'} sur des bandes où aucun n’a été mesuré ; ${some === '1' ? 'il prend les longueurs de sa station, sinon de sa strate' : 'ils prennent les longueurs de leur station, sinon de leur strate'}.`,
      ),
    noteOf: (species, note) => s(`${species} : ${note}.`),
    counted: (n, one) => `${n} ${one ? 'animal compté' : 'animaux comptés'}`,
    noneMeasured: (counted) => `${counted}, aucun mesuré`,
    measured: (animals, n) => `${animals}, dont ${counted(n, 'mesuré')}`,
    limitAt: (mm) => `limite ${mm} mm`,
  },
  strips: {
    stations: (stratum, n, one) => `${stratum}, ${n} ${one ? 'station' : 'stations'}`,
    full: (n) =>
      `Là où il y a trop d’animaux pour des traits, une bande remplie jusqu’en haut en contient ${n}.`,
    animals: (n, one) => `${n} ${one ? 'animal' : 'animaux'}`,
    searched: (some, all) => `${counted(some, 'bande prospectée', 'bandes prospectées')} sur ${all}`,
    nothing: (station) => s(`station ${station} : rien d’écrit`),
    inWords: (station, belts) => s(`station ${station}, bande par bande : ${belts}`),
    states: {
      zero: 'zéro',
      lost: 'perdue',
      'not looked for': 'non cherchée',
      unresolved: 'non remplie',
    },
  },
  effort: {
    allStrata: 'Toutes les strates',
    notKnown: 'inconnue',
    byStratum: 'Stations et surface prospectée par strate',
    byDay: (survey) => s(`${survey} : stations de chaque jour`),
    planned: (planned, visited, replaced) =>
      s(
        `${counted(planned, 'station était prévue', 'stations étaient prévues')}, ${visited} d’entre elles ${visited === '1' ? 'visitée' : 'visitées'} ; ${counted(replaced, 'avait été remplacée', 'avaient été remplacées')} par la suivante de la liste.`,
      ),
    handPicked: (planned, visited) =>
      s(
        ` Stations choisies à la main en plus : ${counted(planned, 'prévue')}, ${counted(visited, 'visitée')}.`,
      ),
    ofPlan: (survey, plan, told) => s(`${survey}, plan ${plan} : ${told}`),
    notVisited: (codes) => s(` Non visitées : ${codes}.`),
    notInPlan: (codes) => s(` Visitées et hors du plan : ${codes}.`),
    andMore: (codes, n) => `${codes} et ${n} de plus`,
  },
  where: {
    inWords: (n, strata) => `Carte de ${counted(n, 'station')} dans les strates ${strata}`,
    without: (codes) => s(` Stations sans position écrite : ${codes}.`),
    shown: (some, all) => `${counted(some, 'station')} sur ${all}.`,
    drawnTogether: s(
      ' Les longitudes sont resserrées selon le cosinus de la latitude : juste pour quelques kilomètres.',
    ),
    noMap: 'Aucune carte n’est dessinée.',
    borders: ' Les traits fins sont les contours des strates.',
    bordersRounded: s(
      ' Les traits fins sont les contours des strates ; un point arrondi peut tomber hors de la sienne.',
    ),
    sideBySide: ' Les stations qui tombent sur un même point arrondi sont mises côte à côte.',
    positions: {
      exact: s('Les positions sont exactes : gardez cette feuille au bureau.'),
      rounded:
        'Les positions sont arrondies au centième de degré (environ 1 km), pour que cette page ne mène personne aux animaux.',
      none: 'Les positions ne sont pas données dans ce document.',
    },
    ring: (zone) => s(`anneau : ${zone}`),
  },
  signs: {
    title: (signs) => s(`Signes : ${signs}`),
    stroke: 'un trait par animal',
    filled: s('beaucoup d’animaux : hauteur remplie'),
    empty: 'prospectée et vide',
    lost: 'perdue ou pas faite',
    blank: s('non remplie : attend une réponse'),
    notLookedFor: 'non cherchée',
    short: 'écourtée',
  },
};
