/** Languages in which the catalogue speaks. */
export type Language = 'en' | 'fr';
