/** The name of an area among its properties. */

export type Properties = Readonly<Record<string, string | number | boolean | null>>;

const usualNames = ['name', 'stratum', 'title', 'label', 'id'];

/** The property asked for, else the first of the usual ones, capitals or not; null when none is filled. */
export function nameAmong(properties: Properties, asked: string | null): string | null {
  for (const wanted of asked === null ? usualNames : [asked.toLowerCase()]) {
    const found = Object.entries(properties).find(
      ([key, value]) => key.toLowerCase() === wanted && isFilled(value),
    );
    if (found !== undefined) return String(found[1]).trim();
  }
  return null;
}

function isFilled(value: string | number | boolean | null): boolean {
  return value !== null && String(value).trim() !== '';
}
