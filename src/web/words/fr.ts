import { answersFr } from './answers.fr.ts';
import { dayFr } from './day.fr.ts';
import type { Words } from './en.ts';
import { frameFr } from './frame.fr.ts';
import { spacedWords } from './french-words.ts';
import { photosFr } from './photos.fr.ts';
import { questionsFr } from './questions.fr.ts';
import { sheetsFr } from './sheets.fr.ts';

/** The same shape as English: a missing word does not compile. */
export const fr: Words = spacedWords({
  frame: frameFr,
  day: dayFr,
  sheets: sheetsFr,
  photos: photosFr,
  questions: questionsFr,
  answers: answersFr,
});
