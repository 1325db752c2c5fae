/** What has to be read with a set of answers: each sentence once, with the species it speaks of. */

import type { Reason } from '../survey/message.ts';
import { densityPhrases } from './catalogue/density-phrases.ts';
import type { Language } from './catalogue/language.ts';
import { nameInSentence, type SpeciesName } from './species-names.ts';

/** A row of answers, and what has to be said of it. */
export interface NotedRow {
  readonly species: string;
  /** The stratum or survey of the row; empty where the rows are one for each species. */
  readonly scope: string;
  readonly reasons: readonly Reason[];
}

export interface NoteWords {
  readonly language: Language;
  readonly nameOf: (species: string) => SpeciesName;
  /** How one reason is said, on paper or at the keyboard. */
  readonly say: (reason: Reason) => string;
}

/**
 * "Found at fewer than 10 stations: … (sandfish, leopardfish)." A sentence that names its species itself names all
 * of them at once; one that holds for every row names none.
 */
export function groupedNotes(rows: readonly NotedRow[], words: NoteWords): readonly string[] {
  const said = rows.flatMap((row) => row.reasons.map((reason) => ({ row, reason })));
  const groups = Map.groupBy(said, ({ reason }) => keyOf(reason, words));
  return [...groups.values()].map((group) => {
    const { reason } = group[0]!;
    if (reason.code === 'zero-stratum-prior') return densityPhrases(words.language).zeroStrata;
    const concerned = group.map(({ row }) => row);
    if (typeof reason.parameters.species !== 'string') {
      const names = concerned.length === rows.length ? [] : namesOf(concerned, rows, words);
      return withNames(words.say(reason), names);
    }
    const species = joined(namesOf(concerned, rows, words), words.language);
    return withNames(words.say({ ...reason, parameters: { ...reason.parameters, species } }), []);
  });
}

/** Two reasons are one sentence where they differ in the species alone; which strata lack one stands in the table. */
function keyOf(reason: Reason, { say }: NoteWords): string {
  const { code, parameters } = reason;
  if (code === 'zero-stratum-prior') return code;
  return typeof parameters.species === 'string'
    ? say({ ...reason, parameters: { ...parameters, species: '*' } })
    : say(reason);
}

/** Each species once; with the rows it is about, where these are not all of its own. */
function namesOf(
  concerned: readonly NotedRow[],
  rows: readonly NotedRow[],
  { nameOf }: NoteWords,
): readonly string[] {
  const species = [...new Set(concerned.map((row) => row.species))];
  return species.map((one) => {
    const own = [...new Set(concerned.filter((row) => row.species === one).map((row) => row.scope))];
    const all = new Set(rows.filter((row) => row.species === one).map((row) => row.scope));
    const name = nameInSentence(nameOf(one));
    return own.length === all.size ? name : `${name} in ${own.join(', ')}`;
  });
}

function withNames(text: string, names: readonly string[]): string {
  const ended = /[.?!]$/.test(text) ? text : `${text}.`;
  if (names.length === 0) return ended;
  const listed = names.join(names.some((name) => name.includes(',')) ? '; ' : ', ');
  return ended.endsWith('.') ? `${ended.slice(0, -1)} (${listed}).` : `${ended} (${listed})`;
}

/** "lollyfish, sandfish and trochus". */
export function joined(names: readonly string[], language: Language): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} ${language === 'fr' ? 'et' : 'and'} ${names.at(-1)}`;
}
