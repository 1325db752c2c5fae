/** Weights, targets and size limits: small tables that hang on surveys and species. */

import type { Problem } from '../../survey/message.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { TableRows } from '../../survey/table-rows.ts';
import { type BookInHand, targetKey, weightKey } from './book-in-hand.ts';
import type { Changes } from './changes.ts';

export function resolveMeasured(
  rows: TableRows,
  book: BookInHand,
  changes: Changes,
  problems: Problem[],
): void {
  resolveWeights(rows, book, changes, problems);
  for (const { row, place } of rows.targets) {
    const survey = book.surveys.get(row.survey);
    const species = book.speciesNames.find(row.species);
    if (survey === undefined) {
      problems.push(
        problemOf('unknown-survey', place, { value: row.survey, parameters: { survey: row.survey } }),
      );
    } else if (species !== undefined) {
      const target = { surveyId: survey.id, speciesId: species.id };
      changes.keep('target', book.targets, targetKey(target), target);
    }
  }
  for (const { row } of rows.limits) {
    const species = book.speciesNames.find(row.species);
    if (species === undefined) continue;
    const { species: _, ...fields } = row;
    changes.keep('sizeLimit', book.limits, species.id, { ...fields, speciesId: species.id });
  }
}

function resolveWeights(rows: TableRows, book: BookInHand, changes: Changes, problems: Problem[]): void {
  const ordinals = new Map<string, number>();
  for (const { row, place } of rows.weights) {
    const survey = book.surveys.get(row.survey);
    const species = book.speciesNames.find(row.species);
    if (survey === undefined) {
      problems.push(
        problemOf('unknown-survey', place, { value: row.survey, parameters: { survey: row.survey } }),
      );
      continue;
    }
    if (species === undefined) continue;
    const { survey: _, station, species: __, ...measured } = row;
    const first = {
      ...measured,
      surveyId: survey.id,
      stationCode: station,
      speciesId: species.id,
      ordinal: 1,
    };
    const group = weightKey(first);
    const ordinal = (ordinals.get(group) ?? 0) + 1;
    ordinals.set(group, ordinal);
    const weight = { ...first, ordinal };
    changes.keep('weight', book.weights, weightKey(weight), weight);
  }
}
