/** French spacing: a no-break space before : ; ? ! %, and inside « ». Values in slots are left alone. */

const gap = '\u00a0';

/** The sentences as written here with plain spaces, spaced so that no line begins with a mark. */
export function frenchSpaced<const T extends Readonly<Partial<Record<string, string>>>>(sentences: T): T {
  const spaced = Object.entries(sentences).map(([code, text]) => [code, spacedText(text ?? '')] as const);
  return Object.fromEntries(spaced) as T;
}

/** ` [;:?!%»]` and `« ` keep their two sides together, also where an optional part begins between them. */
export function spacedText(text: string): string {
  return text.replace(/ ([;:?!%»])/g, `${gap}$1`).replace(/« /g, `«${gap}`);
}
