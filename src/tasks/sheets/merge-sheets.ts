/** One sheet out of two that differ, as a person chose: this cell group from theirs, that one from yours. */

import type { Tally, Transect } from '../../survey/words.ts';
import type { Sheet, SheetDifference } from './sheet-schemas.ts';

export type Choice = 'theirs' | 'yours' | 'note';

/** What belongs together: the station, one belt, one species on one belt. */
export function cellGroup({ transect, swim, speciesId }: SheetDifference): string {
  return transect === null ? 'station' : [transect, swim, speciesId ?? 'belt'].join('\t');
}

/**
 * Begins with their sheet, whose identities the book knows, and puts in what was chosen from yours.
 * `note` keeps theirs and writes what yours said into the note of the belt, word by word.
 */
export function mergeSheets(
  { theirs, yours }: { readonly theirs: Sheet; readonly yours: Sheet },
  choices: ReadonlyMap<string, Choice>,
  noteOf: (group: string) => string,
): Sheet {
  const chosen = (group: string) => choices.get(group) ?? 'theirs';
  const ids = new Map(theirs.transects.map((belt) => [keyOf(belt), belt.id]));
  const stationId = theirs.station.id;
  const transects: Transect[] = [];
  const tallies: Tally[] = [];
  for (const key of new Set([...theirs.transects, ...yours.transects].map(keyOf))) {
    const one = theirs.transects.find((belt) => keyOf(belt) === key);
    const other = yours.transects.find((belt) => keyOf(belt) === key);
    const belt = chosen(`${key}\tbelt`) === 'yours' ? other : one;
    if (belt === undefined) continue;
    const id = ids.get(key) ?? belt.id;
    const notes = notesOf(key, choices, noteOf);
    const note = [belt.note, ...notes].filter(Boolean).join('; ') || null;
    transects.push({ ...belt, id, stationId, note });
    tallies.push(
      ...talliesOf(id, { theirs, yours, one, other, chosen: (species) => chosen(`${key}\t${species}`) }),
    );
  }
  const station = chosen('station') === 'yours' ? { ...yours.station, id: stationId } : theirs.station;
  const stationNotes = chosen('station') === 'note' ? [noteOf('station')] : [];
  const note = [station.note, ...stationNotes].filter(Boolean).join('; ') || null;
  return { station: { ...station, note }, transects, tallies };
}

interface Sides {
  readonly theirs: Sheet;
  readonly yours: Sheet;
  readonly one: Transect | undefined;
  readonly other: Transect | undefined;
  readonly chosen: (speciesId: string) => Choice;
}

function talliesOf(transectId: string, { theirs, yours, one, other, chosen }: Sides): Tally[] {
  const left = theirs.tallies.filter((tally) => tally.transectId === one?.id);
  const right = yours.tallies.filter((tally) => tally.transectId === other?.id);
  const species = new Set([...left, ...right].map((tally) => tally.speciesId));
  return [...species].flatMap((speciesId) => {
    const standing = left.find((tally) => tally.speciesId === speciesId);
    const typed = right.find((tally) => tally.speciesId === speciesId);
    // A belt that only one side has comes with its counts.
    const isYours = one === undefined || (other !== undefined && chosen(speciesId) === 'yours');
    const taken = isYours ? typed : standing;
    return taken === undefined ? [] : [{ ...taken, id: standing?.id ?? taken.id, transectId }];
  });
}

function notesOf(
  key: string,
  choices: ReadonlyMap<string, Choice>,
  noteOf: (group: string) => string,
): readonly string[] {
  const groups = [...choices].filter(([group, choice]) => choice === 'note' && group.startsWith(`${key}\t`));
  return groups.map(([group]) => noteOf(group));
}

function keyOf({ code, swim }: Transect): string {
  return `${code}\t${swim}`;
}
