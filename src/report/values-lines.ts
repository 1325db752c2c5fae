/** Values from outside the survey as a list for the command line: species by species, own ones first. */

import type { ValueContent, ValueKind } from '../survey/value-words.ts';
import type { ChosenValue } from '../survey/values-lookup.ts';
import type { Species } from '../survey/words.ts';
import { sentence } from './catalogue/sentence.ts';
import { speciesNames } from './species-names.ts';
import { valueInWords } from './value-words.ts';

interface Listed {
  readonly species: string;
  readonly inBook: boolean;
  readonly value: ChosenValue;
}

/** Every value on a line of its own with its source below it, so that none is seen without one. */
export function valuesLines(listed: readonly Listed[], species: readonly Species[]): readonly string[] {
  const shown = listed.some((one) => one.inBook) ? listed.filter((one) => one.inBook) : listed;
  if (shown.length === 0) {
    return ['No value is known for this; bring your own with “slateline values --add FILE.csv”.'];
  }
  const nameOf = speciesNames(species);
  const groups = Map.groupBy(shown, (one) => one.species);
  const lines = [...groups].flatMap(([name, values]) => {
    const { label, scientific } = nameOf(name);
    const head = scientific === '' ? label : `${label} (${scientific})`;
    const inBook = values[0]!.inBook ? '' : ', not in this book';
    return ['', `${head}${inBook}`, ...values.flatMap(({ value }) => valueLines(value))];
  });
  return [...lines.slice(1), ...notes(shown.map(({ value }) => value)), ...unshown(listed, shown)];
}

/** A book of a dozen species is read; forty more below it are not. */
function unshown(listed: readonly Listed[], shown: readonly Listed[]): readonly string[] {
  const names = [...new Set(listed.filter((one) => !shown.includes(one)).map((one) => one.species))];
  if (names.length === 0) return [];
  return ['', `Built in as well, for species that are not in this book: ${names.join(', ')}.`];
}

function valueLines(value: ChosenValue): readonly string[] {
  const replaced = value.replaced ? ' — replaced by your own' : '';
  const where = placeOf(value.content);
  const note = value.note === null ? '' : ` — ${value.note}`;
  return [
    `  ${kindInWords[value.content.what]}${where}: ${valueInWords(value.content)}${note}${replaced}`,
    `      ${sentence('en', value.standing)}`,
  ];
}

export const kindInWords: Readonly<Record<ValueKind, string>> = {
  'length-weight': 'length-weight pair',
  'mean-weight': 'mean weight',
  conversion: 'conversion',
  'reference-density': 'published density',
  'size-at-maturity': 'size at first maturity',
  'size-limit': 'legal size',
  'usual-length': 'usual length',
};

function placeOf(content: ValueContent): string {
  return 'place' in content && content.place !== null ? `, ${content.place}` : '';
}

function notes(values: readonly ChosenValue[]): readonly string[] {
  const has = (isOne: (value: ChosenValue) => boolean) => values.some(isOne);
  const examples = has(({ content, own }) => content.what === 'size-limit' && !own)
    ? [
        'Legal sizes above are examples and enter no answer: bring in your national schedule (table limits, or values --add).',
      ]
    : [];
  const remembered = has(({ status }) => status === 'memory')
    ? ['“From memory” means that nobody has checked the number: look it up before it is published.']
    : [];
  const said = [...examples, ...remembered];
  return said.length === 0 ? [] : ['', ...said];
}
