import type { UtmPosition } from './position-notation.ts';
import type { PositionCaution, PositionRefusal } from './position-words.ts';

interface UtmReading {
  readonly value: UtmPosition;
  readonly cautions: readonly PositionCaution[];
  readonly refusal: PositionRefusal | null;
}

const pattern =
  /^(?:UTM\s*)?(?:ZONE\s*)?(\d{1,2})\s*([A-Z])?(?:ORTH|OUTH)?[\s,;]+(?:E\s*[:=]?\s*)?(\d{6}(?:\.\d+)?)\s*(?:M?\s*E\b|M\b)?[\s,;]+(?:N\s*[:=]?\s*)?(\d{1,8}(?:\.\d+)?)\s*(?:M?\s*N\b|M\b)?$/;

/**
 * Zone, letter, easting and northing in metres, as in "60K 542383 8037290" or "zone 60 S, 542383 mE 8037290 mN".
 * Null when the text is no UTM at all. Letters C to M are bands south of the equator, N to X north of it; S alone is
 * read as the hemisphere, with a caution, because surveys in these waters write it so.
 */
export function readUtm(tidy: string): UtmReading | null {
  const found = pattern.exec(tidy);
  if (found === null) return null;
  const [, zone, letter, easting, northing] = found;
  const value: UtmPosition = {
    zone: Number(zone),
    hemisphere: letter !== undefined && (letter === 'S' || letter < 'N') ? 'S' : 'N',
    eastingM: Number(easting),
    northingM: Number(northing),
  };
  return {
    value,
    cautions: letter === 'S' ? ['utm-letter-as-hemisphere'] : [],
    refusal: refusalOf(value, letter),
  };
}

function refusalOf(value: UtmPosition, letter: string | undefined): PositionRefusal | null {
  if (letter === undefined) return 'utm-without-hemisphere';
  // I and O are left out of the bands; A, B, Y and Z are polar.
  if (/[ABIOYZ]/.test(letter)) return 'utm-out-of-range';
  if (value.zone < 1 || value.zone > 60) return 'utm-out-of-range';
  if (value.eastingM < 100_000 || value.eastingM > 900_000) return 'utm-out-of-range';
  return value.northingM > 10_000_000 ? 'utm-out-of-range' : null;
}
