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
