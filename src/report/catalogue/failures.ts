/** What could not be done, and what the person can do about it. */

import type { FailureCode } from '../../survey/failure.ts';
import { failuresValues } from './failures-values.ts';

export const failures: Readonly<Record<FailureCode, string>> = {
  ...failuresValues,
  'no-book-here':
    'there is no survey book in {folder}; if it lies on a stick or another drive, put that in and try again; otherwise name another folder with --book, or make a book with “slateline new”',
  'book-exists': 'there is already a survey book in {folder}; name another folder with --book',
  'book-newer':
    'the book in {folder} was made by a later version of the program (its form is {version}, this program knows {known}); nothing was touched: use the later version',
  'book-damaged':
    'the book in {folder} is damaged[ ({detail})]; nothing was written: leave it as it is and restore the last backup with “slateline restore BACKUP --book {folder}”, which keeps the damaged book aside',
  'book-locked':
    'another program is writing to the book in {folder}; nothing was written: wait until it is done, or close it, and try again',
  'read-only':
    'the book in {folder} may only be read here; nothing was written: copy the folder to a place where you may write',
  'disk-full':
    'the disk of {folder} is full; nothing of this change was written, and everything before it is kept: make room and try again',
  'disk-fault':
    'the disk of {folder} does not answer as it should[ ({detail})]; nothing more was written: check the disk and its cable, then “slateline verify --book {folder}”; if the book is lost, restore the last backup with “slateline restore BACKUP --book FOLDER”',
  'folder-gone':
    'the book in {folder} is not any more where it was opened; nothing of this change was written: if it is on a stick or another drive, put that back and try again; if it is lost, restore the last backup with “slateline restore BACKUP --book FOLDER”',
  'book-is-backup':
    '{folder} is a backup and stays as it was made; bring it back with “slateline restore {folder} --book FOLDER”',
  'no-backup-here':
    'there is no backup at {path}; name a folder made by “slateline backup”, or the folder in which they lie',
  'backup-damaged':
    'the backup {path} is not as it was made[ ({detail})]; nothing was touched: take the backup before it',
  'backup-failed':
    'no backup was made at {path}[: {detail}]; the book and the earlier backups are as they were: make room, or name another place with --to',
  'folder-not-empty':
    'there is something in {folder} that is no survey book; nothing was touched: name an empty folder with --book',
  'nothing-yet': 'the book held nothing yet at {moment}[; the first change was written at {first}]',
  'past-stays':
    'the book as it stood at {moment} is only there to be read; open it without --as-of to change it',
  'nothing-in-history':
    'nothing in the history matches {asked}; check the names, or leave one out to see more',
  // what a change would do to the records
  'record-invalid': 'this {kind} cannot be kept: {field}[: {detail}]',
  'already-there':
    'the {kind} “{key}” is in the book already; give another name, or change the one that is there',
  'refers-to-nothing': 'this {kind} names {missing}, which is not in the book; add that first',
  'unknown-survey-name':
    'there is no survey “{name}” in this book[; did you mean {nearest}?][; the surveys are {known}]',
  'unknown-plan-name':
    'there is no plan “{name}” in this book[; did you mean {nearest}?][; the plans are {known}]',
  'area-name-of-several':
    '“{name}” is the name of several areas of this book ({roles}); say which with --role',
  'unknown-area-name':
    'there is no area “{name}” on the map of this book[; did you mean {nearest}?][; the areas are {known}]',
  'mask-reason-missing':
    'a mask has to say why it is no ground[ ({count} {count:does|do} not)]; add --reason land, --reason closed or --reason "too deep"',
  'unknown-species-name':
    'there is no species “{name}” in this book[; did you mean {nearest}?][; the species are {known}]',
  'unknown-stratum-name':
    'there is no stratum “{name}” in this book[; did you mean {nearest}?][; the strata are {known}]',
  'unknown-scope-name':
    'there is no {scope} “{name}” in this survey[; did you mean {nearest}?][; there are {known}]',
  'no-such-question': 'no question “{code}” is open there[; did you mean {nearest}?][; there are: {known}]',
  'several-questions':
    '{count} questions “{code}” are open there; say which one, by its station, transect, species or value: {known}',
  'stop-not-answerable':
    '“{code}” is a stop: both cannot be true, so no answer settles it; correct the data and import again',
  'belts-not-entered':
    'station {station} has no transects yet, so there is nothing to mark “none seen”; enter its transects first',
  'no-survey-yet': 'this book holds no survey yet; bring one in with “slateline import”',
  'path-not-found': 'there is nothing at {path}; check the path',
  'not-a-demo-book':
    'the book in {folder} is not the invented demo, and the demo is never written over a real book; name another folder with --book',
  'cannot-write': 'nothing can be written to {path}[: {detail}]; name another place',
  'not-loopback':
    'Slateline is served to this computer only, not at {host}: another address needs accounts, which do not exist yet; use 127.0.0.1, ::1 or localhost',
  'one-survey-only':
    'a change needs two surveys, and “{survey}” is the only one, or the first, of this book; bring an earlier one in with “slateline import”',
  'same-survey-twice': '“{survey}” is named twice; a change needs an earlier and a later survey',
  'surveys-backwards':
    '“{earlier}” was before “{later}”, so a fall would read as a rise; write --from "{earlier}" --to "{later}"',
  'trend-needs-three':
    'a trend needs at least three surveys, and there {surveys:is|are} {surveys}; compare two of them with “slateline change”',
  'impact-needs-control':
    '--impact and --control belong together: a place that was closed or opened, and one where nothing was done',
  'no-such-place-in-both':
    'no station of these surveys lies in a zone or stratum “{name}”; there are {known}',
  'port-taken':
    'another program is using port {port}; name another one with --port, or 0 for any that is free',
};
