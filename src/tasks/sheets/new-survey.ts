/** A new survey with its protocol, strata, species and targets, or new words of one that stands, made ready as one act. */

import type { Act } from '../../survey/acts.ts';
import { Failure } from '../../survey/failure.ts';
import type { Change } from '../../survey/store.ts';
import type { RecordKind, RecordOf } from '../../survey/words.ts';
import { plainText, type SheetTools } from './sheet-tools.ts';
import type { AddWords, NewSurvey } from './survey-schemas.ts';

export type ReadyToWrite =
  | { readonly state: 'to write'; readonly act: Act; readonly revision: string }
  | { readonly state: 'stands'; readonly revision: string; readonly repeated: boolean };

/** Throws a Failure when a record would change one that the book holds. */
export async function readySurvey(
  request: NewSurvey,
  tools: SheetTools,
  newId: () => string,
): Promise<ReadyToWrite> {
  const { protocol, survey } = request;
  const frame = [
    ...(await newOnes(tools, 'protocol', protocol === null ? [] : [protocol])),
    ...(await newOnes(tools, 'survey', [survey])),
  ];
  return readyWords(request, { surveyId: survey.id, frame, tools, newId });
}

export interface WordsPlace {
  readonly surveyId: string;
  /** What comes into the book in the same act. */
  readonly frame: readonly Change[];
  readonly tools: SheetTools;
  readonly newId: () => string;
}

/** Strata, species and targets of a survey; those that stand already are left alone. */
export async function readyWords(
  request: AddWords,
  { surveyId, frame, tools, newId }: WordsPlace,
): Promise<ReadyToWrite> {
  const { store, digest, at, device } = tools;
  const { strata, species, targets } = request;
  const revision = digest(plainText({ strata, species, targets }));
  if (await store.actWritten(request.requestId)) return { state: 'stands', revision, repeated: true };
  const standing = (await store.all('target')).filter((one) => one.surveyId === surveyId);
  const known = new Set(standing.map(({ speciesId }) => speciesId));
  const changes: Change[] = [
    ...frame,
    ...(await newOnes(tools, 'stratum', strata)),
    ...(await newOnes(tools, 'species', species)),
  ];
  for (const speciesId of new Set(targets)) {
    if (known.has(speciesId)) continue;
    const after = { id: newId(), surveyId, speciesId };
    changes.push({ kind: 'target', recordId: after.id, after });
  }
  if (changes.length === 0) return { state: 'stands', revision, repeated: false };
  const mustBeNew = new Set(changes.map(({ recordId }) => recordId));
  const signature = { who: request.who, at, device: request.device ?? device, why: request.why };
  return { state: 'to write', revision, act: { id: request.requestId, signature, changes, mustBeNew } };
}

/** What the book holds as it was sent is left alone; what it holds otherwise is refused. */
async function newOnes<K extends RecordKind>(
  { store }: SheetTools,
  kind: K,
  sent: readonly (RecordOf<K> & { readonly name: string })[],
): Promise<Change[]> {
  const standing = new Map((await store.all(kind)).map((record) => [record.id, record]));
  return sent.flatMap((after) => {
    const before = standing.get(after.id);
    if (before === undefined) return [{ kind, recordId: after.id, after } as unknown as Change];
    if (plainText(before) === plainText(after)) return [];
    throw new Failure('already-there', { kind, key: after.name });
  });
}
