/**
 * One set of signs for what print and keyboards offer: ° ' " - and capital hemisphere letters.
 *
 * The masculine ordinal, the ring and the asterisk stand in for the degree sign, two single strokes for the double
 * one, dashes for the minus; words (south, lat, deg) become signs. Lines and tabs separate like a semicolon.
 */
export function tidyNotation(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\uff01-\uff5e]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0))
    .replace(/[\u2010-\u2015\u2212\ufe63]/g, '-')
    .replace(/[\u00ba\u02da\u2218\u25e6\u00b0*]|(?<=\d\s*)(?:degrees?|degs?)\b\.?/gi, '°')
    .replace(/['`\u00b4\u2018\u2019\u02b9\u02bc\u2032]{2}|[\u201c\u201d\u2033\u02ba\u201e]/g, '"')
    .replace(/[`\u00b4\u2018\u2019\u02b9\u02bc\u2032]/g, "'")
    .replace(/(?<=\d\s*)(?:minutes?|mins?)\b\.?/gi, "'")
    .replace(/(?<=\d\s*)(?:seconds?|secs?)\b\.?/gi, '"')
    .replace(/\b(north|south|east|west)\b/gi, (word) => word[0]!)
    .replace(/[\r\n\t|/]+/g, ';')
    .replace(/[\s\u00a0]+/g, ' ')
    .trim()
    .toUpperCase();
}
