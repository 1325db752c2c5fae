/** Lines of a form, such as "reef flat, 420": what cannot be read is named, never dropped. */

export interface StratumLine {
  readonly name: string;
  /** Null where no area is written. */
  readonly areaHa: number | null;
}

export interface LinesRead<Line> {
  readonly lines: readonly Line[];
  /** Areas and names that nobody can be sure of, as written. */
  readonly unread: readonly {
    readonly line: number;
    readonly text: string;
    readonly why: 'area' | 'twice';
  }[];
}

/** One stratum on each line: its name, then after a comma, semicolon or tab its area in hectares. */
export function readStrata(text: string): LinesRead<StratumLine> {
  const lines: StratumLine[] = [];
  const unread: { line: number; text: string; why: 'area' | 'twice' }[] = [];
  text.split('\n').forEach((written, i) => {
    const [name = '', ...rest] = splitOnce(written);
    if (name === '') return;
    const area = rest.join('').trim();
    const areaHa = area === '' ? null : readAmount(area.replace(/\s*ha$/i, ''));
    if (area !== '' && (areaHa === null || areaHa === 0))
      unread.push({ line: i + 1, text: area, why: 'area' });
    if (lines.some((one) => one.name.toLowerCase() === name.toLowerCase())) {
      unread.push({ line: i + 1, text: name, why: 'twice' });
    }
    lines.push({ name, areaHa });
  });
  return { lines, unread };
}

function splitOnce(line: string): string[] {
  const at = line.search(/[,;\t]/);
  return at < 0 ? [line.trim()] : [line.slice(0, at).trim(), line.slice(at + 1)];
}

/**
 * A number with point or comma, not below zero. Null for anything else, and for `1,200`, which is twelve hundred in one
 * country and one and a fifth in another.
 */
export function readAmount(text: string): number | null {
  const tidy = text.trim().replace(/(?<=\d)[ \u00a0\u202f](?=\d{3}(?:\D|$))/g, '');
  if (/^\d{1,3}(?:[.,]\d{3})+$/.test(tidy) && !tidy.startsWith('0')) return null;
  const found = /^\d+(?:[.,]\d+)?$/.exec(tidy);
  return found === null ? null : Number(tidy.replace(',', '.'));
}
