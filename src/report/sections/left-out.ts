/** Every station or belt that is in neither the count nor the area, said once, with the species it concerns. */

import type { Reason } from '../../survey/message.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { type Language, sentenceOnPaper } from '../catalogue/sentence.ts';
import { list, paragraph, section } from '../html.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { speciesNames } from '../species-names.ts';

export function leftOutSection(input: ReportInput, survey: ReportSurvey, language: Language): string {
  const words = reportWords(language);
  const items = leftOutInWords(input, survey, language);
  return section('left-out', words.leftOut, [
    items.length === 0 ? paragraph(words.nothingLeftOut) : list(items),
  ]);
}

function leftOutInWords(input: ReportInput, survey: ReportSurvey, language: Language): string[] {
  const nameOf = speciesNames(input.species);
  const entries = new Map<string, Entry>();
  const asked = new Set<string>();
  for (const answer of [...survey.densityBySurvey, ...survey.densityByStratum]) {
    asked.add(answer.species);
    for (const { reason, transect } of answer.leftOut)
      gather(entries, reason, { transect, species: answer.species });
  }
  return joinTransects([...entries.values()]).map(({ reason, transects, species }) => {
    const parameters = transects.length === 0 ? {} : { transect: transects.join(', ') };
    const text = sentenceOnPaper(language, {
      code: reason.code,
      parameters: { ...reason.parameters, ...parameters },
    });
    if (species.size === asked.size) return `${text}.`;
    const names = [...species].map((name) => nameOf(name).label).toSorted();
    return `${text} (${names.join(', ')}).`;
  });
}

interface Entry {
  readonly reason: Reason;
  readonly transects: readonly string[];
  readonly species: Set<string>;
}

/** One entry for each station or belt and reason, with every species that leaves it out. */
function gather(
  entries: Map<string, Entry>,
  reason: Reason,
  of: { transect: string | null; species: string },
): void {
  const key = JSON.stringify([reason.code, reason.parameters, of.transect]);
  const entry = entries.get(key) ?? {
    reason,
    transects: of.transect === null ? [] : [of.transect],
    species: new Set(),
  };
  entry.species.add(of.species);
  entries.set(key, entry);
}

/** Belts of one station that were left out for the same reason and the same species are said together. */
function joinTransects(entries: readonly Entry[]): Entry[] {
  const joined = new Map<string, Entry>();
  for (const entry of entries) {
    const same = { ...entry.reason.parameters, transect: '' };
    const key = JSON.stringify([entry.reason.code, same, [...entry.species].toSorted()]);
    const before = joined.get(key);
    joined.set(
      key,
      before === undefined ? entry : { ...before, transects: [...before.transects, ...entry.transects] },
    );
  }
  return [...joined.values()];
}
