/** What could not be done, and what the person can do about it. */

import type { FailureCode } from '../../survey/failure.ts';

export const failures: Readonly<Record<FailureCode, string>> = {
  'no-book-here':
    'there is no survey book in {folder}; make one with “slateline new”, or name another folder with --book',
  'book-exists': 'there is already a survey book in {folder}; name another folder with --book',
  'book-newer':
    'the book in {folder} was made by a later version of the program (its form is {version}, this program knows {known}); nothing was touched: use the later version',
  'book-damaged':
    'the book in {folder} is damaged[ ({detail})]; nothing was written: bring back the last backup',
  'book-locked':
    'another program is writing to the book in {folder}; wait until it is done, or close it, and try again',
  'read-only': 'the book in {folder} may only be read here; copy it to a folder where you may write',
  'disk-full': 'the disk of {folder} is full; nothing was written: make room and try again',
  'disk-fault':
    'the disk of {folder} does not answer as it should[ ({detail})]; nothing more was written: check the disk and the last backup',
  'record-invalid': 'this {kind} cannot be kept: {field}[: {detail}]',
  'already-there':
    'the {kind} “{key}” is in the book already; give another name, or change the one that is there',
  'refers-to-nothing': 'this {kind} names {missing}, which is not in the book; add that first',
  'unknown-survey-name':
    'there is no survey “{name}” in this book[; did you mean {nearest}?][; the surveys are {known}]',
  'unknown-species-name':
    'there is no species “{name}” in this book[; did you mean {nearest}?][; the species are {known}]',
  'unknown-stratum-name':
    'there is no stratum “{name}” in this book[; did you mean {nearest}?][; the strata are {known}]',
  'no-survey-yet': 'this book holds no survey yet; bring one in with “slateline import”',
  'path-not-found': 'there is nothing at {path}; check the path',
  'not-a-demo-book':
    'the book in {folder} is not the invented demo, and the demo is never written over a real book; name another folder with --book',
  'cannot-write': 'nothing can be written to {path}[: {detail}]; name another place',
};
