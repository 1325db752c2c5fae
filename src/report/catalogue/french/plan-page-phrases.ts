/** Tous les mots de la page d’un plan. Les précautions sont d’usage courant ; aucune source n’est revendiquée. */

import { formatDay } from '../../days.ts';
import type { PlanPagePhrases } from '../plan-page-phrases.ts';
import { spacedText } from './typography.ts';

const s = spacedText;

export const planPagePhrasesFr: PlanPagePhrases = {
  title: (book, plan) => s(`${book} : plan ${plan}`),
  forSurvey: (survey) => `Pour ${survey}. `,
  drawn: (on, by) => `Tiré le ${formatDay(on, 'fr')} par ${by}.`,
  exact: s(
    'Les positions sont exactes, pour l’équipage : ne donnez cette page à personne qui n’ait besoin de trouver les animaux. Elles sont écrites comme sur un récepteur : point décimal, et W pour l’ouest.',
  ),
  decide: {
    head: 'Ce qui est à décider',
    none: 'Personne n’a écrit ce que cette campagne doit décider.',
    stations: (n, strata, picked, spares) =>
      s(
        `${counted(n, 'station')} dans ${counted(strata, 'strate')}${picked} ; ${counted(spares, 'remplaçante')}.`,
      ),
    picked: (n) => `, et ${n} de plus, ${n === '1' ? 'choisie' : 'choisies'} à la main`,
    noBelts: 'L’emplacement des bandes n’est pas encore fixé.',
    belts: (n, size, gapM) =>
      `À chaque station, ${counted(n, 'bande')} de ${size} en série, à ${gapM} m d’écart.`,
    long: (lengthM) => `${lengthM} m`,
    longAndWide: (lengthM, widthM) => `${lengthM} m sur ${widthM} m`,
  },
  safety: {
    head: 'Avant le départ du bateau',
    rules: [
      s(
        'Les règles locales et le chef de plongée priment sur cette page. Elle ne calcule aucune décompression, et ses cartes ne montrent ni profondeurs ni dangers : ce ne sont pas des cartes marines.',
      ),
      s(
        'Chaque personne à l’eau est formée pour les plongées prévues et apte le jour même ; personne ne plonge seul.',
      ),
      'Quelqu’un à terre a cette liste, sait quand le bateau doit rentrer et qui appeler s’il ne rentre pas.',
      s(
        'À bord : eau potable, un moyen d’appel qui fonctionne sur place, fusées ou autre signal, trousse de secours et oxygène.',
      ),
      'La mer, la marée et la lumière sont jugées le jour même. Une station qui n’est pas sûre est remplacée selon la liste, jamais forcée.',
      'Un cap est pour le plongeur qui déroule le mètre ruban, pas pour le bateau. Le fer près du compas (bouteilles, ancre, moteur) le fait dévier.',
    ],
  },
  strata: {
    head: 'Stations par strate',
    all: 'Toutes les strates',
    caption: s(
      'Stations de chaque strate. W : sa part de la surface ; les fixes sont comprises dans les stations, celles choisies à la main viennent en plus',
    ),
    areaHa: 'Surface, ha',
    share: 'W',
    maskedHa: 'Masqué, ha',
    stations: 'Stations',
    fixed: 'Fixes',
    handPicked: 'Choisies à la main',
    replaced: 'Remplacées',
    sparesLeft: 'Remplaçantes restantes',
    handPickedRule:
      'Les stations choisies à la main ne parlent que pour elles-mêmes. Elles n’entrent pas dans l’estimation d’une strate, ni dans cette campagne ni dans aucune autre après elle.',
    replaceRule: s(
      'Une station qui ne peut pas être faite est remplacée par la remplaçante suivante de sa strate, dans l’ordre de la liste, et la raison est écrite. Un endroit voisin qui lui ressemble ne la remplace pas : il favoriserait les fonds faciles d’accès.',
    ),
  },
  where: {
    head: 'Localisation des stations',
    inWords: (n, strata) => `Carte de ${n} stations prévues et remplaçantes dans ${strata}`,
    noMap: (detail) => `Aucune carte n’est dessinée. ${detail}`,
    caption: (stacked, links) =>
      s(
        `Contours comme sur la carte du carnet. Les codes des remplaçantes sont dans le tableau.${stacked}${links} Les longitudes sont resserrées selon le cosinus de la latitude : juste pour quelques kilomètres. Aucune profondeur : ce n’est pas une carte marine.`,
      ),
    stacked: ' Les stations d’un même point arrondi sont l’une sur l’autre.',
    links: ' Une ligne tiretée mène d’une station abandonnée à celle qui la remplace.',
    masked: 'masqué avant le tirage',
    kinds: {
      random: 'nouvelle, tirée au hasard',
      fixed: 'fixe, visitée de nouveau',
      'hand-picked': 'choisie à la main',
      spare: 'remplaçante',
      dropped: 'abandonnée',
    },
  },
  precision: {
    head: 'Précision à attendre, et ce qu’elle coûte',
    species: 'Espèce',
    densityPerHa: 'Densité d’alors, par ha',
    cv: 'CV attendu',
    cvAssured: 'CV assuré',
    fall: 'Baisse décelée, à',
    rise: 'Hausse décelée, à',
    caption: (pilot) =>
      s(
        `D’après la dispersion de ${pilot}. CV assuré : pas pire dans 8 campagnes de ce genre sur 10. Baisse et hausse : le plus petit changement par rapport à elle, en facteur, décelé 8 fois sur 10 à 95 % avec le CV assuré (formule, logarithme du rapport)`,
      ),
    unseen: (pilot, species) =>
      s(`Aucun animal vu dans ${pilot}, si bien que rien ne peut être promis : ${species}.`),
    notKnown: (reason) => s(`Inconnue sans campagne pilote : ${reason}.`),
    notKnownFrom: (reason, pilot) => s(`Inconnue sans campagne pilote : ${reason} (${pilot}).`),
    noEarlier: 'le carnet n’a pas de campagne antérieure',
    unreadable: 'elle ne peut pas être lue',
    noSpreadIn: (strata) => `elle ne montre pas de dispersion dans ${strata}`,
    noSpread: 'elle ne montre de dispersion pour aucune espèce',
    noRate: (stations) =>
      s(
        `Ce qu’elle coûte est inconnu : personne n’a dit combien des ${stations} stations un bateau fait en un jour.`,
      ),
    cost: (stations, perDay, days, money) =>
      s(
        `${counted(stations, 'station')} à raison de ${perDay} par jour, soit ${days} ${days === '1' ? 'jour' : 'jours'} de bateau${money} ; les jours perdus à cause du mauvais temps s’y ajoutent.`,
      ),
    money: (whole, perDay) => `, ${whole} à ${perDay} par jour`,
  },
  belts: {
    head: 'Emplacement de chaque bande',
    bearings: (day, model, inside) =>
      s(
        `Caps pour le ${formatDay(day, 'fr')} : le cap vrai d’après la carte, le cap magnétique au compas ; ${model}. Sur son fond : la part de la bande qui s’y trouve${inside}.`,
      ),
    alongLine: ', le long de sa ligne',
    wholeWidth: ', sur toute sa largeur',
    misfits: (codes) => s(`Pas entièrement sur leur fond : ${codes}.`),
    details: s(
      'Chaque station vue d’en haut, à l’échelle, le nord en haut. L’anneau est le début ; une ligne tiretée est le contour de sa strate, une ligne pointillée celui d’un masque.',
    ),
    detailInWords: (station, belts, bearing) =>
      s(`station ${station} : ${counted(belts, 'bande')} au cap vrai ${bearing}`),
    north: 'N',
    station: 'Station',
    belt: 'Bande',
    chosen: 'Choix',
    position: 'Position (WGS84)',
    start: 'Début (WGS84)',
    end: 'Fin',
    true: 'Cap vrai',
    compass: 'Cap magnétique',
    declination: 'Déclinaison',
    inside: 'Sur son fond',
    caption: 'Stations dans l’ordre de la liste',
    laidCaption: s('Stations dans l’ordre de la liste ; début de la première bande, fin de la dernière'),
    turningCaption: 'Séries qui tournent, bande par bande',
  },
  replacements: {
    head: 'Stations remplacées',
    dropped: 'Abandonnée',
    replacement: 'Remplaçante',
    none: 'il n’en restait pas',
    stratum: 'Strate',
    why: 'Raison',
    who: 'Qui, quand',
    caption: 'Remplacées par la suivante de la liste',
  },
  against: {
    head: 'Ce que le plan est devenu',
    planned: 'Prévues',
    visited: 'Visitées',
    replaced: 'Remplacées',
    notVisited: 'Non visitées',
    caption: 'Stations prévues, visitées et remplacées',
  },
  made: {
    head: 'Comment le tirage a été fait',
    apart: (metres) => `, à ${metres} m au moins l’une de l’autre`,
    method: (method, apart, seed) => s(`${method}${apart} ; graine\u00a0${seed}.`),
    revisits: (survey) => ` Les stations fixes sont celles de ${survey}.`,
    chance: s(
      'Les stations sont des positions au hasard à l’intérieur des strates de la carte, une fois les fonds masqués ôtés, si bien que chaque endroit restant avait une chance connue. Ces positions ont été réparties sur le fond ; la réponse du même nombre de stations en est plus précise, et rien ne change à ce qui peut être choisi.',
    ),
    bearings:
      'Les caps ont été choisis pour que chaque bande reste sur son fond. Le fond près d’un contour est donc prospecté un peu moins que le reste de sa strate.',
  },
};

/** Avec 0 comme avec 1, le singulier. */
function counted(n: string, one: string): string {
  return `${n} ${one}${n === '0' || n === '1' ? '' : 's'}`;
}
