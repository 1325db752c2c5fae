/** Pieces of a page. Text given to these functions is escaped here; what is named markup is already safe. */

import { escapeText } from './escape.ts';

export function heading(level: 2 | 3 | 4, text: string): string {
  return `<h${level}>${escapeText(text)}</h${level}>`;
}

export function paragraph(text: string, className = ''): string {
  return `<p${className === '' ? '' : ` class="${className}"`}>${escapeText(text)}</p>`;
}

export function list(items: readonly string[]): string {
  return `<ul>${items.map((item) => `<li>${escapeText(item)}</li>`).join('')}</ul>`;
}

export function section(name: string, title: string, markup: readonly string[]): string {
  return `<section id="${name}" aria-labelledby="${name}-title">\n<h2 id="${name}-title">${escapeText(title)}</h2>\n${markup.join('\n')}\n</section>`;
}

/** A figure with the words under it, if there are any. */
export function figure(markup: string, caption: string): string {
  const words = caption === '' ? '' : `<figcaption>${escapeText(caption)}</figcaption>`;
  return `<figure>${markup}${words}</figure>`;
}

/** One figure drawn twice, for a sheet and for a phone; the style sheet shows the one that fits. */
export function bothWidths(draw: (width: number, kind: 'wide' | 'narrow') => string): string {
  return `<div class="wide">${draw(sheetWidth, 'wide')}</div><div class="narrow">${draw(phoneWidth, 'narrow')}</div>`;
}

const sheetWidth = 680;
export const phoneWidth = 328;
