/** Words of the sections of advice, by language. */

import { counted } from '../../survey/counted.ts';
import type { Language } from './language.ts';

const english = {
  four: 'The four questions',
  howMuch: 'How much is there?',
  upOrDown: 'Is it going up or down?',
  healthy: 'Is that healthy?',
  take: 'What may be taken?',
  inFull: 'The same, with zones, chances and sources',
  commonPart:
    'A change is worked out over the part that both surveys worked, so that its densities may differ a little from those of the whole.',
  moreOrLess: 'Is it more or less than before?',
  oneSurvey:
    'This book has one survey, so no change can be told; a second survey done the same way would give it.',
  twoSurveys: 'A trend needs three surveys; one more, done the same way, would give it.',
  trendHead: 'Over all surveys',
  lower: 'lower or probably lower',
  higher: 'higher or probably higher',
  cannotTell: 'cannot tell',
  told: (from: string, to: string) => `From ${from} to ${to}`,
  none: 'none',
  axis: 'later density over earlier: 1 is no change, each step multiplies',
  bandsExplained:
    'The darker the band, the more the counts speak for that change; the tall tick is the estimate, the hair lines the ends of the interval. A band across the line at 1 is a change that cannot be told.',
  verdicts: {
    same: 'The two surveys can be compared.',
    limited: 'The two surveys can be compared, with the limits named here.',
    held: 'The two surveys cannot be compared as they stand.',
  },
  handPicked: 'Stations were picked by hand: a change at these stations, and at no other place.',
  noValues:
    'No published density of these species is known here; give one with “slateline values --add FILE.csv”, with its author, year and method.',
  statusAnswer: (below: string, above: string, open: string) =>
    `Below, or likely below, every published density they can be compared with: ${below}. Above, or likely above, all of them: ${above}. Between them, or not to be told: ${open}.`,
  statusLimits: 'A published density is what somebody counted elsewhere or proposed, not a law of this reef.',
  noReference: 'No published density is known here.',
  shares: 'Mature and legal animals',
  sharesExplained:
    'The filled part is the share of the animals at or above the size; the hair lines are the ends of its interval.',
  noLengths:
    'No share of mature or legal animals can be given: it needs measured animals and a size at maturity or a size limit of the book.',
  mature: 'mature',
  legal: 'legal',
  zoneHead: 'Zone by zone',
  noSpread: 'too few stations to tell it from chance',
  weighs: 'How much does it weigh?',
  noWeights:
    'No weight can be given: it needs measured animals and a length-weight pair, a mean weight, or your own weighings (table “weights”).',
  weightAnswer: (n: number, all: number, ranges: number, largest: string) =>
    `A weight can be given for ${n} of ${all} species${ranges === 0 ? '' : `, and an order of magnitude for ${ranges} more`}; the largest is ${largest}.`,
  weightLimits:
    'Tonnes are those of the sampled strata only, from animals weighed one by one by their lengths, never by the mean length. Strata where none was recorded are left out of the rows and stay in the sum.',
  noCatch: (example: string) =>
    `No rate is assumed, so no catch is worked out: what share may be taken in a year is not in the counts. Make the report again with at least three rates, each with its source: ${example}.`,
  decision:
    'These are options worked out from the counts; which of them is taken, or none, is the manager’s decision.',
  catchAnswer: (n: number, all: number) =>
    `At the rates that were given a catch can be worked out for ${n} of ${all} species that ${all === 1 ? 'was' : 'were'} recorded.`,
  noCatchShort: 'No rate was given, and none is assumed; see “What may be taken?”.',
  fewRates: 'At least three different rates are needed: one alone would read like advice.',
  stepsOf: (name: string) => `The catch of ${name}`,
  stands: 'Does it stand?',
  standsAnswer: (all: number, rests: string, leans: string) =>
    `Of ${all} species with an estimate, these rest on one station: ${rests}; these lean on one: ${leans}.`,
  nothingToTry: 'No species has an estimate that could be tried otherwise.',
  roots: 'Where does this number come from?',
  rootsAnswer:
    'The densities of the first page, with the numbers put into the formula; “slateline explain” opens any other figure down to its belts.',
  noRoots: 'No figure of the first page can be opened, because none has an estimate.',
  of: (name: string) => `The density of ${name}`,
} as const;

type Words<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...given: infer Given) => string
      ? (...given: Given) => string
      : Words<T[K]>;
};
type AdviceWords = Words<typeof english>;

const french: AdviceWords = {
  four: 'Les quatre questions',
  howMuch: 'Combien y en a-t-il\u00a0?',
  upOrDown: 'Est-ce en hausse ou en baisse\u00a0?',
  healthy: 'Est-ce en bon état\u00a0?',
  take: 'Que peut-on prélever\u00a0?',
  inFull: 'Les mêmes, avec zones, probabilités et sources',
  commonPart:
    'Un changement est calculé sur la partie commune aux deux campagnes\u00a0; ses densités peuvent donc différer un peu de celles de l’ensemble.',
  moreOrLess: 'Y en a-t-il plus ou moins qu’avant\u00a0?',
  oneSurvey:
    'Ce carnet n’a qu’une campagne, aucun changement ne peut donc être établi\u00a0; une deuxième, menée de la même façon, le permettrait.',
  twoSurveys:
    'Une tendance demande trois campagnes\u00a0; une de plus, menée de la même façon, la donnerait.',
  trendHead: 'Sur toutes les campagnes',
  lower: 'en baisse ou probablement en baisse',
  higher: 'en hausse ou probablement en hausse',
  cannotTell: 'indéterminé',
  told: (from, to) => `De ${from} à ${to}`,
  none: 'aucune',
  axis: 'densité récente rapportée à l’ancienne\u00a0: 1 = sans changement, chaque pas multiplie',
  bandsExplained:
    'Plus le bandeau est sombre, plus les comptages plaident pour ce changement\u00a0; le grand trait est l’estimation, les traits fins, les bornes de l’intervalle. Un bandeau qui traverse la ligne 1 est un changement qui n’est pas établi.',
  verdicts: {
    same: 'Les deux campagnes sont comparables.',
    limited: 'Les deux campagnes sont comparables, dans les limites indiquées ici.',
    held: 'Les deux campagnes ne sont pas comparables telles quelles.',
  },
  handPicked:
    'Les stations ont été choisies à la main\u00a0: un changement à ces stations, et nulle part ailleurs.',
  noValues:
    'Aucune densité publiée de ces espèces n’est connue ici\u00a0; donnez-en une avec «\u00a0slateline values --add FICHIER.csv\u00a0», avec auteur, année et méthode.',
  statusAnswer: (below, above, open) =>
    `Au-dessous, ou probablement au-dessous, de toutes les densités publiées comparables\u00a0: ${below}. Au-dessus, ou probablement au-dessus, de toutes\u00a0: ${above}. Entre elles, ou sans conclusion possible\u00a0: ${open}.`,
  statusLimits:
    'Une densité publiée est ce que quelqu’un a compté ailleurs ou proposé, pas une loi de ce récif.',
  noReference: 'Aucune densité publiée n’est connue ici.',
  shares: 'Animaux matures et de taille légale',
  sharesExplained:
    'La partie remplie est la part des animaux à cette taille ou plus\u00a0; les traits fins sont les bornes de son intervalle.',
  noLengths:
    'Aucune part d’animaux matures ou de taille légale ne peut être donnée\u00a0: il faut des animaux mesurés et une taille à maturité ou une taille limite du carnet.',
  mature: 'matures',
  legal: 'taille légale',
  zoneHead: 'Zone par zone',
  noSpread: 'trop peu de stations pour le distinguer du hasard',
  weighs: 'Quel poids cela représente-t-il\u00a0?',
  noWeights:
    'Aucun poids ne peut être donné\u00a0: il faut des animaux mesurés et une paire longueur-poids, un poids moyen, ou vos propres pesées (tableau «\u00a0weights\u00a0»).',
  weightAnswer: (n, all, ranges, largest) =>
    `Un poids peut être donné pour ${counted(n, 'espèce')} sur ${all}${ranges === 0 ? '' : `, et un ordre de grandeur pour ${counted(ranges, 'autre')}`}\u00a0; le plus élevé est celui de l’espèce ${largest}.`,
  weightLimits:
    'Les tonnes sont celles des seules strates visitées\u00a0; chaque animal est pesé d’après sa longueur, jamais d’après la longueur moyenne. Les strates où rien n’a été noté n’ont pas de ligne, mais restent dans la somme.',
  noCatch: (example) =>
    `Aucun taux n’est supposé, aucune prise n’est donc calculée\u00a0: la part à prélever par an n’est pas dans les comptages. Refaites le rapport avec au moins trois taux, chacun avec sa source\u00a0: ${example}.`,
  decision:
    'Ce sont des options calculées à partir des comptages\u00a0; en retenir une, ou aucune, est la décision du gestionnaire.',
  catchAnswer: (n, all) =>
    `Aux taux donnés, une prise peut être calculée pour ${n} ${all === 1 ? 'sur 1 espèce observée' : `des ${all} espèces observées`}.`,
  noCatchShort:
    'Aucun taux n’a été donné, et aucun n’est supposé\u00a0; voir «\u00a0Que peut-on prélever\u00a0?\u00a0».',
  fewRates: 'Il faut au moins trois taux différents\u00a0: un seul se lirait comme un conseil.',
  stepsOf: (name) => `La prise\u00a0: ${name}`,
  stands: 'Ces résultats tiennent-ils\u00a0?',
  standsAnswer: (all, rests, leans) =>
    `Sur ${counted(all, 'espèce')} avec une estimation, celles-ci reposent sur une seule station\u00a0: ${rests}\u00a0; celles-ci s’appuient surtout sur une\u00a0: ${leans}.`,
  nothingToTry: 'Aucune espèce n’a d’estimation à refaire autrement.',
  roots: 'D’où vient ce nombre\u00a0?',
  rootsAnswer:
    'Les densités de la première page, les nombres mis dans la formule\u00a0; «\u00a0slateline explain\u00a0» ouvre tout autre nombre jusqu’à ses bandes.',
  noRoots: 'Aucun nombre de la première page ne peut être ouvert, car aucun n’a d’estimation.',
  of: (name) => `La densité\u00a0: ${name}`,
};

const words: Readonly<Record<Language, AdviceWords>> = { en: english, fr: french };

export function adviceWords(language: Language): AdviceWords {
  return words[language];
}
