/** The codes a reading of a position can carry; the sentences belong to the catalogue. */

export type CoordinateNotation =
  | 'decimal degrees'
  | 'degrees and decimal minutes'
  | 'degrees minutes seconds';

/** Taken for granted while reading: a person should be shown it. */
export type PositionCaution =
  /** Neither letter nor sign: read as north or east. */
  | 'no-hemisphere'
  /** A minus sign and the letter that says the same. */
  | 'sign-and-letter'
  /** Whole degrees only: 60 nautical miles wide. */
  | 'whole-degrees'
  /** Latitude and longitude in different notations. */
  | 'mixed-notations'
  /** ddmm.mmm without a space, as receivers send it. */
  | 'joined-minutes'
  /** 17 45 30 without a sign for seconds: 45 minutes and 30 seconds, or 45.30 minutes. */
  | 'seconds-or-decimals'
  /** The letter S of a UTM zone was read as the southern hemisphere, not as the band 32 to 40 N. */
  | 'utm-letter-as-hemisphere';

/** Why a text gives no position. */
export type PositionRefusal =
  | 'empty'
  | 'not-understood'
  | 'one-coordinate-only'
  | 'too-many-numbers'
  | 'letters-do-not-fit'
  /** Commas that could be decimal commas or separators. */
  | 'ambiguous-commas'
  /** Minus with N or E. */
  | 'sign-against-letter'
  /** O is west in French and east in German. */
  | 'letter-o'
  | 'minutes-out-of-range'
  | 'degrees-out-of-range'
  /** A fraction before the last part, as in 17.5 30. */
  | 'fraction-before-last-part'
  | 'utm-out-of-range'
  | 'utm-without-hemisphere'
  /** The caller knows no way from UTM to degrees. */
  | 'utm-not-converted';

/** What an import asks about a position in a cell. An empty cell is no finding there, and UTM has its way to degrees. */
type CoordinateFinding = PositionCaution | Exclude<PositionRefusal, 'empty' | 'utm-not-converted'>;

/** The problem codes of it: a caution is read and asked about, a refusal is a stop. */
export const coordinateFindingSeverities = {
  'coordinates-no-hemisphere': 'explain',
  'coordinates-sign-and-letter': 'explain',
  'coordinates-whole-degrees': 'explain',
  'coordinates-mixed-notations': 'explain',
  'coordinates-joined-minutes': 'explain',
  'coordinates-seconds-or-decimals': 'explain',
  'coordinates-utm-letter-as-hemisphere': 'explain',
  'coordinates-not-understood': 'stop',
  'coordinates-one-coordinate-only': 'stop',
  'coordinates-too-many-numbers': 'stop',
  'coordinates-letters-do-not-fit': 'stop',
  'coordinates-ambiguous-commas': 'stop',
  'coordinates-sign-against-letter': 'stop',
  'coordinates-letter-o': 'stop',
  'coordinates-minutes-out-of-range': 'stop',
  'coordinates-degrees-out-of-range': 'stop',
  'coordinates-fraction-before-last-part': 'stop',
  'coordinates-utm-out-of-range': 'stop',
  'coordinates-utm-without-hemisphere': 'stop',
} as const satisfies Readonly<Record<`coordinates-${CoordinateFinding}`, 'stop' | 'explain'>>;

export type CoordinateProblemCode = keyof typeof coordinateFindingSeverities;
