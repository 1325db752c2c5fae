import { words } from '../words/words.svelte.ts';

/** An answer as it was typed; "none seen" in the language of the screen, whichever it was said in. */
export function sayAnswer(answer: string): string {
  return /^(none seen|rien vu)$/i.test(answer.trim()) ? words().questions.noneSeenAnswer : answer;
}
