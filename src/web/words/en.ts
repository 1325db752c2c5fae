import { answersEn } from './answers.en.ts';
import { dayEn } from './day.en.ts';
import { frameEn } from './frame.en.ts';
import { photosEn } from './photos.en.ts';
import { questionsEn } from './questions.en.ts';
import { sheetsEn } from './sheets.en.ts';

export const en = {
  frame: frameEn,
  day: dayEn,
  sheets: sheetsEn,
  photos: photosEn,
  questions: questionsEn,
  answers: answersEn,
};
export type Words = typeof en;
