/** Ce qui n’a pas pu être fait, et ce que la personne peut y faire. */

import type { FailureCode } from '../../../survey/failure.ts';
import { failuresValuesFr } from './failures-values.ts';

export const failuresFr: Readonly<Record<FailureCode, string>> = {
  ...failuresValuesFr,
  'no-book-here':
    'il n’y a pas de carnet dans {folder} ; s’il est sur une clé ou un autre disque, branchez-le et recommencez ; sinon nommez un autre dossier avec --book, ou faites un carnet avec « slateline new »',
  'book-exists': 'il y a déjà un carnet dans {folder} ; nommez un autre dossier avec --book',
  'book-newer':
    'le carnet de {folder} a été fait par une version plus récente du programme (sa forme est {version}, ce programme connaît {known}) ; rien n’a été touché : prenez la version plus récente',
  'book-damaged':
    'le carnet de {folder} est endommagé[ ({detail})] ; rien n’a été écrit : laissez-le tel quel et restaurez la dernière sauvegarde avec « slateline restore SAUVEGARDE --book {folder} », qui garde à part le carnet endommagé',
  'book-locked':
    'un autre programme écrit dans le carnet de {folder} ; rien n’a été écrit : attendez qu’il ait fini, ou fermez-le, et recommencez',
  'read-only':
    'le carnet de {folder} peut seulement être lu ici ; rien n’a été écrit : copiez le dossier là où l’écriture est permise',
  'disk-full':
    'le disque de {folder} est plein ; rien de ce changement n’a été écrit, et tout ce qui précède est gardé : faites de la place et recommencez',
  'disk-fault':
    'le disque de {folder} ne répond pas comme il faut[ ({detail})] ; rien de plus n’a été écrit : vérifiez le disque et son câble, puis « slateline verify --book {folder} » ; si le carnet est perdu, restaurez la dernière sauvegarde avec « slateline restore SAUVEGARDE --book DOSSIER »',
  'folder-gone':
    'le carnet de {folder} n’est plus là où il a été ouvert ; rien de ce changement n’a été écrit : s’il est sur une clé ou un autre disque, rebranchez-le et recommencez ; s’il est perdu, restaurez la dernière sauvegarde avec « slateline restore SAUVEGARDE --book DOSSIER »',
  'book-is-backup':
    '{folder} est une sauvegarde et reste telle qu’elle a été faite ; ramenez-la avec « slateline restore {folder} --book DOSSIER »',
  'no-backup-here':
    'il n’y a pas de sauvegarde à {path} ; nommez un dossier fait par « slateline backup », ou le dossier qui les contient',
  'backup-damaged':
    'la sauvegarde {path} n’est pas telle qu’elle a été faite[ ({detail})] ; rien n’a été touché : prenez la sauvegarde précédente',
  'backup-failed':
    'aucune sauvegarde n’a été faite à {path}[ : {detail}] ; le carnet et les sauvegardes précédentes sont comme avant : faites de la place, ou nommez un autre endroit avec --to',
  'folder-not-empty':
    'il y a dans {folder} quelque chose qui n’est pas un carnet ; rien n’a été touché : nommez un dossier vide avec --book',
  'nothing-yet':
    'le carnet ne contenait encore rien le {moment}[ ; le premier changement a été écrit le {first}]',
  'past-stays':
    'le carnet tel qu’il était le {moment} peut seulement être lu ; ouvrez-le sans --as-of pour le changer',
  'nothing-in-history':
    'rien dans l’historique ne correspond à {asked} ; vérifiez les noms, ou enlevez-en un pour voir plus',
  // ce qu’un changement ferait aux enregistrements
  'record-invalid': 'cet enregistrement ({kind}) ne peut pas être gardé : {field}[ : {detail}]',
  'already-there':
    '« {key} » ({kind}) est déjà dans le carnet ; donnez un autre nom, ou changez celui qui est là',
  'refers-to-nothing':
    'cet enregistrement ({kind}) nomme {missing}, qui n’est pas dans le carnet ; ajoutez-le d’abord',
  'unknown-survey-name':
    'il n’y a pas de campagne « {name} » dans ce carnet[ ; est-ce {nearest} ?][ ; les campagnes sont {known}]',
  'unknown-plan-name':
    'il n’y a pas de plan « {name} » dans ce carnet[ ; est-ce {nearest} ?][ ; les plans sont {known}]',
  'area-name-of-several':
    '« {name} » est le nom de plusieurs aires de ce carnet ({roles}) ; dites laquelle avec --role',
  'unknown-area-name':
    'il n’y a pas d’aire « {name} » sur la carte de ce carnet[ ; est-ce {nearest} ?][ ; les aires sont {known}]',
  'mask-reason-missing':
    'un masque doit dire pourquoi ce n’est pas un fond à compter[ ({count} ne le disent pas)] ; ajoutez --reason land, --reason closed ou --reason "too deep"',
  'unknown-species-name':
    'il n’y a pas d’espèce « {name} » dans ce carnet[ ; est-ce {nearest} ?][ ; les espèces sont {known}]',
  'unknown-stratum-name':
    'il n’y a pas de strate « {name} » dans ce carnet[ ; est-ce {nearest} ?][ ; les strates sont {known}]',
  'unknown-scope-name':
    'il n’y a pas « {name} » ({scope}) dans cette campagne[ ; est-ce {nearest} ?][ ; il y a {known}]',
  'no-such-question':
    'aucune question « {code} » n’est ouverte là[ ; est-ce {nearest} ?][ ; il y a : {known}]',
  'several-questions':
    '{count} questions « {code} » sont ouvertes là ; dites laquelle, par sa station, sa bande, son espèce ou sa valeur : {known}',
  'stop-not-answerable':
    '« {code} » arrête tout : les deux ne peuvent pas être vrais, et aucune réponse n’y suffit ; corrigez les données et importez de nouveau',
  'belts-not-entered':
    'la station {station} n’a pas encore de bandes ; il n’y a donc rien à marquer « rien vu » ; saisissez d’abord ses bandes',
  'no-survey-yet': 'ce carnet ne contient encore aucune campagne ; apportez-en une avec « slateline import »',
  'path-not-found': 'il n’y a rien à {path} ; vérifiez le chemin',
  'not-a-demo-book':
    'le carnet de {folder} n’est pas la démonstration inventée, et elle n’est jamais écrite sur un vrai carnet ; nommez un autre dossier avec --book',
  'cannot-write': 'rien ne peut être écrit à {path}[ : {detail}] ; nommez un autre endroit',
  'not-loopback':
    'Slateline n’est servi qu’à cet ordinateur, non à {host} : une autre adresse demande des comptes, qui n’existent pas encore ; prenez 127.0.0.1, ::1 ou localhost',
  'one-survey-only':
    'un changement demande deux campagnes, et « {survey} » est la seule, ou la première, de ce carnet ; apportez-en une plus ancienne avec « slateline import »',
  'same-survey-twice':
    '« {survey} » est nommée deux fois ; un changement demande une première campagne et une seconde',
  'surveys-backwards':
    '« {earlier} » a eu lieu avant « {later} » ; une baisse se lirait donc comme une hausse ; écrivez --from "{earlier}" --to "{later}"',
  'trend-needs-three':
    'une tendance demande au moins trois campagnes, et il y en a {surveys} ; comparez-en deux avec « slateline change »',
  'impact-needs-control':
    '--impact et --control vont ensemble : un lieu qui a été fermé ou ouvert, et un autre où rien n’a été fait',
  'no-such-place-in-both':
    'aucune station de ces campagnes n’est dans une zone ou une strate « {name} » ; il y a {known}',
  'port-taken':
    'un autre programme utilise le port {port} ; nommez-en un autre avec --port, ou 0 pour n’importe lequel de libre',
};
