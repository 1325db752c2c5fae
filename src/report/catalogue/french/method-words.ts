/** Comment les nombres ont été calculés, en phrases, avec les sources par auteur et année. */

import type { IntervalMethod } from '../../../estimates/shapes.ts';
import { formatShare } from '../../numbers.ts';
import type { IntervalNames, MethodSettings } from '../method-words.ts';
import { spacedText } from './typography.ts';

export const intervalNamesFr: IntervalNames = {
  clumped: 'comptages agrégés',
  lognormal: 'log-normal',
  t: 't',
  percentile: 'bootstrap, percentiles',
  bca: 'bootstrap, BCa',
  poisson: 'borne de Poisson',
};

export function methodParagraphsFr(settings: MethodSettings): readonly string[] {
  const caution =
    'Avec moins de 10 stations où une espèce a été trouvée, l’incertitude réelle peut être plus grande que l’intervalle ne le montre.';
  return [
    'L’unité est la station. Les animaux de ses bandes sont additionnés et divisés par la surface prospectée ; les bandes d’une station ne sont jamais prises pour des lieux indépendants (Hurlbert 1984). Les bandes perdues quittent le nombre comme la surface ; une bande écourtée compte pour la longueur prospectée ; une bande prospectée et vide est un zéro.',
    'Chaque strate compte par sa surface sur la carte, jamais par le nombre de stations que le bateau a pu visiter (moyenne stratifiée : Cochran 1977, chapitre 5). Là où la surface prospectée d’une station n’atteint pas les deux tiers du plan, la strate prend la somme de ses animaux sur la somme de ses surfaces (rapport des sommes : Cochran 1977, chapitre 6). Les degrés de liberté sont ceux de Satterthwaite (1946). Une strate d’une seule station donne une moyenne sans dispersion.',
    `${intervalSentences(settings)} ${caution}`,
    `Là où aucun animal n’a été vu, la réponse est une borne et non zéro : la plus haute densité à laquelle une campagne comme celle-ci ne verrait rien dans ${formatShare(1 - settings.confidence)} des cas. Des animaux dispersés suivent la loi de Poisson, des animaux agrégés la binomiale négative, dont la borne est plus haute.`,
    'Les longueurs sont ramenées, bande par bande, aux animaux qui y ont été comptés. La part qui atteint une taille limite prend les mêmes poids, et sa dispersion vient des différences entre stations.',
  ].map(spacedText);
}

function intervalSentences({ interval, confidence, seed }: MethodSettings): string {
  return sentences(interval, formatShare(confidence), seed);
}

function sentences(interval: IntervalMethod, sure: string, seed: number): string {
  switch (interval) {
    case 'clumped':
      return `L’intervalle demande quelles densités auraient pu donner ces comptages si les animaux sont agrégés, sous deux modèles d’agrégation (binomiale négative, et Poisson log-normale), chacun pondéré par son accord avec les comptages. Il contient ${sure} de ce qu’on peut croire, la moitié du reste de chaque côté ; l’ombre du bandeau est la même croyance (graine ${seed}).`;
    case 'lognormal':
      return `L’intervalle prend l’estimation comme log-normale et la multiplie et la divise par un même facteur, avec le t de Student aux degrés de liberté (Buckland et autres 1993). Il contient la vraie densité dans environ ${sure} des campagnes quand les comptages ne sont pas trop groupés, et moins souvent quand ils le sont.`;
    case 't':
      return `L’intervalle est l’estimation plus et moins le t de Student fois l’erreur type. Il est censé tenir dans ${sure} des campagnes ; pour des animaux agrégés il tient moins souvent et peut descendre sous zéro.`;
    case 'percentile':
    case 'bca':
      return `L’intervalle vient d’un nouveau tirage de stations entières dans chaque strate (bootstrap : Davison et Hinkley 1997 ; graine ${seed}). Il est censé tenir dans ${sure} des campagnes ; à moins de 20 stations il tient moins souvent.`;
  }
}
