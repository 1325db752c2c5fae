/** Questions grouped by where they stand: the survey as a whole first, then station by station. */

import type { ProblemRow } from '../../tasks/sheets/answer-schemas.ts';

export interface QuestionPlace {
  /** Null: the survey as a whole. */
  readonly station: string | null;
  readonly stationId: string | null;
  readonly questions: readonly ProblemRow[];
}

const weight: Readonly<Record<ProblemRow['severity'], number>> = { stop: 0, explain: 1, note: 2 };

/** Places in the order of their codes; in each, what holds answers up comes first, then belt by belt. */
export function questionPlaces(problems: readonly ProblemRow[]): readonly QuestionPlace[] {
  const byPlace = new Map<string | null, ProblemRow[]>();
  for (const problem of problems) {
    byPlace.set(problem.station, [...(byPlace.get(problem.station) ?? []), problem]);
  }
  return [...byPlace]
    .toSorted(([a], [b]) => (a === null ? -1 : b === null ? 1 : inNumbers.compare(a, b)))
    .map(([station, questions]) => ({
      station,
      stationId: questions.find((one) => one.stationId !== null)?.stationId ?? null,
      questions: questions.toSorted(
        (a, b) =>
          weight[a.severity] - weight[b.severity] || inNumbers.compare(a.transect ?? '', b.transect ?? ''),
      ),
    }));
}

/** The same question when it is asked again. */
export function questionKey({ code, station, transect, swim, species, value }: ProblemRow): string {
  return JSON.stringify([code, station, transect, swim, species, value]);
}

/** S2 before S10. */
const inNumbers = new Intl.Collator('en', { numeric: true });
