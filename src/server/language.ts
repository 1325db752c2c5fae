import { type ScreenLanguage, screenLanguages } from '../report/catalogue/server-words.ts';

/** `?lang=fr` first, then the browser's own order, then English. */
export function languageOf(request: Request): ScreenLanguage {
  const asked = new URL(request.url).searchParams.get('lang');
  const wanted = [asked ?? '', ...preferred(request.headers.get('accept-language') ?? '')];
  for (const tag of wanted) {
    const base = tag.split('-')[0]!.toLowerCase();
    const known = screenLanguages.find((one) => one === base);
    if (known !== undefined) return known;
  }
  return 'en';
}

/** Tags of an Accept-Language header, most wanted first (RFC 9110, 12.5.4). */
function preferred(header: string): readonly string[] {
  return header
    .split(',')
    .map((part) => {
      const [tag = '', ...parameters] = part.trim().split(';');
      const weight = parameters.map((one) => /^\s*q=([\d.]+)$/.exec(one)?.[1]).find((q) => q !== undefined);
      return { tag, weight: weight === undefined ? 1 : Number(weight) };
    })
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => b.weight - a.weight)
    .map(({ tag }) => tag);
}
