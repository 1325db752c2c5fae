/** A new survey as the first run makes it: a name, a protocol, strata and species written one on each line. */

import type { Protocol, Species, Stratum } from '../../survey/words.ts';
import type { NewSurveyRequest, SurveyWords } from '../../tasks/sheets/survey-schemas.ts';
import { readWrittenDay } from '../../tasks/sheets/written-day.ts';
import { newId } from './new-id.ts';
import { readAmount, readStrata } from './written-lines.ts';

export const protocolNumbers = ['transectsPerStation', 'lengthM', 'widthM', 'gapM', 'measureFirst'] as const;
export type ProtocolNumber = (typeof protocolNumbers)[number];

export interface WrittenSurvey {
  readonly name: string;
  readonly starts: string;
  /** The record of the book it is as, or a preset. */
  readonly protocol: Protocol | Omit<Protocol, 'id'>;
  readonly numbers: Readonly<Record<ProtocolNumber, string>>;
  readonly strata: string;
  readonly species: string;
  readonly who: string;
}

/** What a person must say before the survey can be made. */
export type Ask =
  | { readonly kind: 'name' | 'stratum' }
  | { readonly kind: 'day'; readonly text: string }
  | { readonly kind: 'number'; readonly field: ProtocolNumber; readonly text: string }
  | { readonly kind: 'area' | 'twice'; readonly line: number; readonly text: string }
  | { readonly kind: 'other area'; readonly name: string; readonly areaHa: number | null };

/** `known` are the words of an earlier survey of the same book: its strata and species are the same records here. */
export function newSurveyOf(
  written: WrittenSurvey,
  known: SurveyWords | null,
  today: string,
): { readonly asks: readonly Ask[]; readonly request: NewSurveyRequest } {
  const name = written.name.trim();
  const day = dayOf(written.starts, today);
  const protocol = protocolOf(written, name);
  const strata = strataOf(written.strata, known?.strata ?? []);
  const species = linesOf(written.species).map((line) => speciesOf(line, known?.species ?? []));
  const asks: Ask[] = [
    ...(name === '' ? [{ kind: 'name' } as const] : []),
    ...day.asks,
    ...protocol.asks,
    ...strata.asks,
  ];
  const request = {
    requestId: newId(),
    base: null,
    who: written.who,
    survey: {
      id: newId(),
      name,
      protocolId: protocol.protocol.id,
      starts: day.starts,
      ends: null,
      purpose: null,
    },
    protocol: protocol.protocol,
    strata: strata.strata,
    species,
    targets: [...new Set(species.map((one) => one.id))],
  };
  return { asks, request };
}

/** What the form shows at first: the strata and species of the last survey. */
export function linesAsBefore(known: SurveyWords): { readonly strata: string; readonly species: string } {
  const strata = known.strata.map(({ name, areaHa }) => (areaHa === null ? name : `${name}, ${areaHa}`));
  const species = known.species
    .filter(({ id }) => known.targets.includes(id))
    .map(({ name, code, localName }) => [name, code ?? '', localName ?? ''].join(', ').replace(/[, ]+$/, ''));
  return { strata: strata.join('\n'), species: species.join('\n') };
}

export function numbersOf(protocol: Omit<Protocol, 'id'>): Record<ProtocolNumber, string> {
  return Object.fromEntries(
    protocolNumbers.map((field) => [field, protocol[field] === null ? '' : String(protocol[field])]),
  ) as Record<ProtocolNumber, string>;
}

function dayOf(text: string, today: string): { readonly starts: string | null; readonly asks: Ask[] } {
  if (text.trim() === '') return { starts: null, asks: [] };
  const { day } = readWrittenDay(text, { present: today, first: null, last: null });
  return { starts: day, asks: day === null ? [{ kind: 'day', text: text.trim() }] : [] };
}

/** A protocol of the book stays that record while its numbers are the same: surveys can then be compared. */
function protocolOf({ protocol, numbers }: WrittenSurvey, surveyName: string) {
  const asks: Ask[] = [];
  const read = Object.fromEntries(
    protocolNumbers.map((field) => {
      const text = numbers[field].trim();
      const amount = text === '' ? null : readAmount(text);
      const isWhole = field === 'transectsPerStation' || field === 'measureFirst';
      if (text !== '' && (amount === null || (isWhole && !Number.isInteger(amount)))) {
        asks.push({ kind: 'number', field, text });
      }
      return [field, amount];
    }),
  ) as Record<ProtocolNumber, number | null>;
  const isSame = 'id' in protocol && protocolNumbers.every((field) => protocol[field] === read[field]);
  if (isSame) return { protocol, asks };
  // Its numbers are this survey's own.
  const made = { ...protocol, ...read, id: newId(), name: `${protocol.layout}, ${surveyName}` };
  return { protocol: made as Protocol, asks };
}

function strataOf(text: string, known: readonly Stratum[]) {
  const { lines, unread } = readStrata(text);
  const asks: Ask[] = unread.map(({ line, text: written, why }) => ({ kind: why, line, text: written }));
  if (lines.length === 0) asks.push({ kind: 'stratum' });
  const strata = lines.map(({ name, areaHa }) => {
    const standing = known.find((one) => one.name.toLowerCase() === name.toLowerCase());
    if (standing === undefined) {
      return { id: newId(), name, habitat: null, areaHa, depthMinM: null, depthMaxM: null };
    }
    if (areaHa !== null && areaHa !== standing.areaHa) {
      asks.push({ kind: 'other area', name: standing.name, areaHa: standing.areaHa });
    }
    return standing;
  });
  return { strata, asks };
}

function linesOf(text: string): readonly (readonly string[])[] {
  const lines = text.split('\n').map((line) => line.split(/[,;\t]/).map((part) => part.trim()));
  return lines.filter(([first]) => first !== undefined && first !== '');
}

function speciesOf([name, code, localName]: readonly string[], known: readonly Species[]): Species {
  const standing = known.find((one) => one.name.toLowerCase() === name!.toLowerCase());
  if (standing !== undefined) return standing;
  return {
    id: newId(),
    name: name!,
    group: null,
    code: code || null,
    commonName: null,
    localName: localName || null,
    aliases: [],
    minLengthMm: null,
    maxLengthMm: null,
    depthMinM: null,
    depthMaxM: null,
    habitats: [],
  };
}
