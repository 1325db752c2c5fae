import type { PositionRefusal } from './position-words.ts';

interface Halves {
  readonly latitude: string;
  readonly longitude: string;
}

/**
 * Cuts a tidy text into latitude and longitude: at hemisphere letters where there are two, else at a separator,
 * else in the middle of its numbers. Latitude comes first unless letters or the words lat and lon say otherwise.
 */
export function splitPosition(tidy: string): Halves | PositionRefusal {
  if (!/\d/.test(tidy)) return 'not-understood';
  const labelled = splitAtLabels(tidy);
  if (labelled !== null) return labelled;
  const comma = withDecimalCommas(tidy);
  if (comma === null) return 'ambiguous-commas';
  const cut =
    splitAtLetters(comma) ?? splitAtSeparator(comma) ?? splitAtDegreeSigns(comma) ?? splitNumbers(comma);
  return typeof cut === 'string' ? cut : inOrder(cut);
}

/** "LAT -17.75 LON 177.4", in either order. */
function splitAtLabels(tidy: string): Halves | null {
  const label = String.raw`(LAT(?:ITUDE)?|LON(?:G(?:ITUDE)?)?|LNG)\.?\s*[:=]?`;
  const found = new RegExp(String.raw`^${label}\s*(.+?)\s*[;,]?\s*\b${label}\s*(.+)$`).exec(tidy);
  if (found === null) return null;
  const [, first, one, second, other] = found;
  const isLatitude = first!.startsWith('LA');
  if (isLatitude === second!.startsWith('LA')) return null;
  return isLatitude ? { latitude: one!, longitude: other! } : { latitude: other!, longitude: one! };
}

/**
 * Decimal commas become points where another separator shows that they are no separators. Points anywhere: commas
 * separate. One comma between two figures and nothing else: it separates. Several: nobody can tell.
 */
function withDecimalCommas(tidy: string): string | null {
  const between = tidy.match(/\d,(?=\d)/g)?.length ?? 0;
  if (between === 0 || /\d\.\d/.test(tidy)) return tidy;
  const isSeparated = /;|,\s|[NSEWO°'"]/.test(tidy) || /\d\s+[-+]?\d/.test(tidy);
  if (isSeparated) return tidy.replace(/(\d),(?=\d)/g, '$1.');
  return between === 1 ? tidy : null;
}

function splitAtLetters(text: string): [string, string] | PositionRefusal | null {
  const places = [...text.matchAll(/[NSEWO]/g)].map((match) => match.index);
  if (places.length === 0) return null;
  if (places.length > 2) return 'letters-do-not-fit';
  if (places.length === 1) return /[;,]/.test(text) ? null : 'letters-do-not-fit';
  const cut = places[0] === 0 ? places[1]! : places[0]! + 1;
  return [text.slice(0, cut), text.slice(cut)];
}

function splitAtSeparator(text: string): [string, string] | PositionRefusal | null {
  const separator = text.includes(';') ? ';' : ',';
  const pieces = text.split(separator).map((piece) => piece.trim());
  if (pieces.length === 1) return null;
  if (pieces.length > 2) return 'too-many-numbers';
  return [pieces[0]!, pieces[1]!];
}

/** "17°45.3' 177°24'": the second half begins with the number that carries the second degree sign. */
function splitAtDegreeSigns(text: string): [string, string] | null {
  const second = [...text.matchAll(/[-+]?\s*\d+(?:\.\d+)?\s*°/g)][1];
  return second === undefined ? null : [text.slice(0, second.index), text.slice(second.index)];
}

function splitNumbers(text: string): [string, string] | PositionRefusal {
  const numbers = text.split(' ');
  if (numbers.length === 1) return 'one-coordinate-only';
  if (numbers.length > 6) return 'too-many-numbers';
  if (numbers.length % 2 === 1) return 'not-understood';
  const half = numbers.length / 2;
  return [numbers.slice(0, half).join(' '), numbers.slice(half).join(' ')];
}

function inOrder([first, second]: readonly [string, string]): Halves {
  const tidied = [first, second].map((half) => half.replace(/^[\s;,]+|[\s;,]+$/g, ''));
  const isExchanged = /[EW]/.test(tidied[0]!) || /[NS]/.test(tidied[1]!);
  const [latitude, longitude] = isExchanged ? [tidied[1]!, tidied[0]!] : [tidied[0]!, tidied[1]!];
  return { latitude, longitude };
}
