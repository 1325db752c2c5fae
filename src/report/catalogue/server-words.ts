/** What the server says by itself: refusals of requests, what is missing on a station, dives over their limits. */

import { fillSentence } from './fill.ts';

/** Languages of the screens. */
export const screenLanguages = ['en', 'fr'] as const;
export type ScreenLanguage = (typeof screenLanguages)[number];

const english = {
  // refusals
  'request-invalid': 'the request cannot be read[: {field}: {detail}]',
  'foreign-origin': 'this request came from another page than Slateline; open Slateline itself and try again',
  'wrong-host': 'Slateline answers only at localhost, 127.0.0.1 or ::1 on this computer',
  'no-such-address': 'there is nothing at this address',
  'wrong-method': 'this address does not know that method',
  'no-such-survey': 'this survey is not in the book; it may have been withdrawn',
  'no-such-station': 'this station is not in the survey; it may have been withdrawn',
  'no-such-photo':
    'this photo is not in the book; it may have been taken away: then it can be brought back under Photos',
  'no-such-job': 'this piece of work is not known; it ended before the server was started again',
  'sheet-changed':
    'somebody else saved this sheet in between; nothing was written: look at both and save what is right',
  'sheet-not-as-seen':
    'this sheet is not any more as it was when you looked at it; nothing was withdrawn: look at it again, then decide',
  'photos-on-station':
    'photos hang on this station ({photos}); nothing was withdrawn: open “Photo of the slate” beside the sheet, take each off this station or away, then withdraw the sheet',
  'day-changed':
    'somebody else saved this day in between; nothing was written: look at both and save what is right',
  'answer-changed':
    'somebody else answered this question in between; nothing was written: look at both and keep what is right',
  'photo-changed':
    'somebody else said something of this photo in between; nothing was written: look at it and say it again',
  'job-not-ended': 'this piece of work is not done yet',
  'job-without-result': 'this piece of work ended without a result',
  'too-large': 'this is too large: at most {limit} MB can be sent here',
  'not-json': 'a write must be sent as application/json',
  'not-a-picture': 'this is no picture that can be kept: JPEG, PNG, WebP, HEIC, GIF or TIFF',
  'not-a-file': 'a file to be imported must be sent as application/octet-stream',
  'too-many-jobs': '{count} pieces of work are running already; wait for one, or cancel it',
  'screens-not-built':
    'the screens were not built yet: run “npm run build”, then start “slateline serve” again',
  'internal-error':
    'internal error: a fault of the program, not of your data; what was written before stands',
  // what is missing on a station
  'no-transects': 'no transect was entered',
  'fewer-transects': '{transects} of {planned} {planned:transect was|transects were} entered',
  'blank-transect': 'transect {transect} is blank: enter what was seen, or mark “none seen”',
  'partial-without-reason': 'transect {transect} was not swum in full, and nobody wrote why',
  'selection-unknown': 'nobody wrote how the station was chosen (random, fixed, hand-picked)',
  // dives against typed limits
  divesPerDay: '{found} dives; the limit typed is {typed} a day',
  minutesPerDay: '{found} {found:minute|minutes} under water; the limit typed is {typed} a day',
  surfaceIntervalMin: '{found} {found:minute|minutes} between two dives; the limit typed is at least {typed}',
  maxDepthM: '{found} m deep; the limit typed is {typed} m',
  // long work
  'step-reading': 'reading[ {name}][, {rows} {rows:row|rows}]',
  'step-comparing': 'comparing with the book',
  'step-estimating': 'estimating and drawing',
  'step-starting': 'starting',
  'step-done': 'done',
} as const;

export type ServerCode = keyof typeof english;

const french: Readonly<Record<ServerCode, string>> = {
  'request-invalid': 'la demande ne peut pas être lue[ : {field} : {detail}]',
  'foreign-origin':
    'cette demande vient d’une autre page que Slateline ; ouvrez Slateline même et recommencez',
  'wrong-host': 'Slateline ne répond qu’à localhost, 127.0.0.1 ou ::1 sur cet ordinateur',
  'no-such-address': 'il n’y a rien à cette adresse',
  'wrong-method': 'cette adresse ne connaît pas cette méthode',
  'no-such-survey': 'cette campagne n’est pas dans le carnet ; elle a peut-être été retirée',
  'no-such-station': 'cette station n’est pas dans la campagne ; elle a peut-être été retirée',
  'no-such-photo':
    'cette photo n’est pas dans le carnet ; elle en a peut-être été ôtée : on peut alors la remettre sous Photos',
  'no-such-job': 'ce travail n’est pas connu ; il a pris fin avant le redémarrage du serveur',
  'sheet-changed':
    'quelqu’un d’autre a enregistré cette fiche entre-temps ; rien n’a été écrit : comparez les deux et enregistrez ce qui est juste',
  'sheet-not-as-seen':
    'cette fiche n’est plus telle que vous l’avez vue ; rien n’a été retiré : regardez-la de nouveau, puis décidez',
  'photos-on-station':
    'des photos tiennent à cette station ({photos}) ; rien n’a été retiré : ouvrez « Photo de l’ardoise » à côté de la fiche, retirez-les une à une de cette station ou ôtez-les du carnet, puis retirez la fiche',
  'day-changed':
    'quelqu’un d’autre a enregistré cette journée entre-temps ; rien n’a été écrit : comparez les deux et enregistrez ce qui est juste',
  'answer-changed':
    'quelqu’un d’autre a répondu à cette question entre-temps ; rien n’a été écrit : comparez les deux et gardez ce qui est juste',
  'photo-changed':
    'quelqu’un d’autre a dit quelque chose de cette photo entre-temps ; rien n’a été écrit : regardez-la et dites-le de nouveau',
  'job-not-ended': 'ce travail n’est pas encore terminé',
  'job-without-result': 'ce travail a pris fin sans résultat',
  'too-large': 'c’est trop volumineux : on peut envoyer ici au plus {limit} Mo',
  'not-json': 'ce qui est à écrire doit être envoyé en application/json',
  'not-a-picture': 'ce n’est pas une image qui peut être gardée : JPEG, PNG, WebP, HEIC, GIF ou TIFF',
  'not-a-file': 'un fichier à importer doit être envoyé en application/octet-stream',
  'too-many-jobs': '{count} travaux sont déjà en cours ; attendez-en un, ou annulez-le',
  'screens-not-built':
    'les écrans ne sont pas encore construits : lancez « npm run build », puis de nouveau « slateline serve »',
  'internal-error': 'erreur interne : un défaut du programme, pas de vos données ; ce qui était écrit reste',
  'no-transects': 'aucune bande n’a été saisie',
  'fewer-transects': '{transects} {transects:bande saisie|bandes saisies} sur {planned}',
  'blank-transect':
    'la bande {transect} n’est pas remplie : saisissez ce qui a été vu, ou cochez « rien vu »',
  'partial-without-reason':
    'la bande {transect} n’a pas été parcourue en entier, et personne n’a écrit pourquoi',
  'selection-unknown':
    'personne n’a écrit comment la station a été choisie (au hasard, fixe, choisie à la main)',
  divesPerDay: '{found} plongées ; la limite saisie est de {typed} par jour',
  minutesPerDay: '{found} {found:minute|minutes} sous l’eau ; la limite saisie est de {typed} par jour',
  surfaceIntervalMin:
    '{found} {found:minute|minutes} entre deux plongées ; la limite saisie est d’au moins {typed}',
  maxDepthM: '{found} m de profondeur ; la limite saisie est de {typed} m',
  'step-reading': 'lecture[ de {name}][, {rows} {rows:ligne|lignes}]',
  'step-comparing': 'comparaison avec le carnet',
  'step-estimating': 'estimation et dessin',
  'step-starting': 'démarrage',
  'step-done': 'terminé',
};

const catalogues: Readonly<Record<ScreenLanguage, Readonly<Record<ServerCode, string>>>> = {
  en: english,
  fr: french,
};

export function serverSentence(
  language: ScreenLanguage,
  code: ServerCode,
  parameters: Readonly<Record<string, string | number>> = {},
): string {
  const words = Object.entries(parameters).map(([name, value]) => [name, String(value)] as const);
  return fillSentence(catalogues[language][code], Object.fromEntries(words));
}
