/**
 * Drawings as text. A figure is built from these few functions alone, so that the same values give
 * the same bytes on every machine: coordinates are rounded to a tenth, there are no random names.
 */

import { colours } from './colours.ts';
import { escapeText } from './escape.ts';

export type Attributes = Readonly<Record<string, string | number | null>>;

/** One element; a null attribute is left out. Children are already markup. */
export function element(name: string, attributes: Attributes, children: readonly string[] = []): string {
  let text = `<${name}`;
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== null) text += ` ${key}="${typeof value === 'number' ? tenth(value) : escapeText(value)}"`;
  }
  return children.length === 0 ? `${text}/>` : `${text}>${children.join('')}</${name}>`;
}

/** A piece of writing at a place; what it says is escaped here. */
export function write(x: number, y: number, text: string, attributes: Attributes = {}): string {
  return element('text', { x, y, fill: colours.ink, ...attributes }, [escapeText(text)]);
}

export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string {
  return element('line', { x1, y1, x2, y2, stroke: colours.ink, 'stroke-width': 1, ...attributes });
}

/** A whole figure, with the sentence that stands for it where it cannot be seen. */
export function drawing(
  size: { readonly width: number; readonly height: number },
  inWords: string,
  children: readonly string[],
): string {
  const { width, height } = size;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${tenth(width)} ${tenth(height)}`,
      width,
      height,
      role: 'img',
      'aria-label': inWords,
      'font-family': "'Source Sans 3', sans-serif",
      'font-size': 13,
    },
    ['\n', children.join('\n'), '\n'],
  );
}

/** About how wide a piece of writing is; good enough to keep labels from running into each other. */
export function textWidth(text: string, fontSize = 13): number {
  return text.length * fontSize * 0.5;
}

/** Words broken into lines of at most so many letters; a longer word stands alone. */
export function wrapWords(text: string, letters: number): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(' ')) {
    if (current !== '' && current.length + 1 + word.length > letters) {
      lines.push(current);
      current = word;
    } else current = current === '' ? word : `${current} ${word}`;
  }
  if (current !== '') lines.push(current);
  return lines;
}

/** A coordinate to a tenth of a unit. */
function tenth(value: number): string {
  if (!Number.isFinite(value)) throw new Error('a drawing requires finite coordinates');
  return String(Math.round(value * 10) / 10 + 0);
}
