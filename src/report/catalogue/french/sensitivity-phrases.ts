/** Si une réponse tient, dans des phrases et dans un tableau. */

import type { SensitivityPhrases } from '../sensitivity-phrases.ts';
import { spacedText as s } from './typography.ts';

export const sensitivityPhrasesFr: SensitivityPhrases = {
  nothingToTry: (reason) => s(`${reason} : il n’y a rien à essayer autrement.`),
  oneEach: s('Chaque strate a une seule station : aucune ne peut être laissée de côté.'),
  range: (perHa, least, most) =>
    `Une station laissée de côté à la fois, ${perHa} par ha devient au moins ${least} et au plus ${most}.`,
  without: (perHa, station) => `${perHa} (sans ${station})`,
  holds: ({ station, stratum }, share, some, all) =>
    `${station} (${stratum}) tient ${share} des animaux (${some} sur ${all})`,
  noneWithout: 'sans elle aucun animal n’a été observé',
  moves: (perHa, change) => `sans elle la densité est de ${perHa} par ha, ${change}`,
  rests: (holds, moves) => s(`La réponse repose sur une seule station : ${holds} ; ${moves}.`),
  leans: (holds, moves) => s(`La réponse s’appuie sur une station : ${holds} ; ${moves}.`),
  stands: (station, moves) =>
    s(
      `La réponse tient : aucune station ne la déplace de plus d’un cinquième. Celle qui la déplace le plus est ${station} : ${moves}.`,
    ),
  noDifferent: 'sans différence',
  less: (share) => `${share} de moins`,
  more: (share) => `${share} de plus`,
  explained: s(
    'Une station est laissée de côté à la fois. Une réponse repose sur une seule station quand sa densité bouge de plus d’un tiers sans elle, ou quand ce qui est dit d’une densité publiée change ; elle s’appuie sur une station quand sa densité bouge de plus d’un cinquième ; sinon elle tient.',
  ),
  heads: {
    verdict: 'Verdict',
    animals: 'Animaux',
    perHa: 'Par ha',
    least: 'Le moins, sans une station',
    most: 'Le plus, sans une station',
    station: 'Station qui la déplace le plus',
    share: 'Ses animaux',
    change: 'Changement sans elle',
  },
  restsCell: 'repose\u00a0sur\u00a0une',
  ofAll: (some, share) => `${some} (${share})`,
  stationIn: (station, stratum) => `${station}, ${stratum}`,
  leansCell: 's’appuie\u00a0sur\u00a0une',
  standsCell: 'tient',
  caption: 'Une station laissée de côté à la fois',
};
