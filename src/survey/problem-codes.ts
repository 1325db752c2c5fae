/**
 * Every finding the program can make about data, with its usual severity.
 * stop: nothing is written, no answer is given. explain: a person should answer. note: good to know.
 * The catalogue holds the sentences; the handbook has a line for each.
 */
export const problemSeverities = {
  // reading files
  'nothing-to-read': 'stop',
  'no-such-file': 'stop',
  'file-unreadable': 'stop',
  'unknown-table': 'stop',
  'missing-column': 'stop',
  'unknown-column': 'note',
  'missing-value': 'stop',
  'not-a-number': 'stop',
  'number-out-of-range': 'stop',
  'not-a-whole-number': 'stop',
  'not-a-date': 'stop',
  'not-a-time': 'stop',
  'not-one-of': 'stop',
  'row-too-long': 'stop',
  'file-not-utf8': 'stop',
  'broken-quotes': 'stop',
  'repeated-column': 'stop',
  'cover-not-understood': 'stop',
  'not-a-table': 'note',
  'more-of-the-same': 'note',
  // what rows say about each other
  'unknown-species': 'stop',
  'species-spelling': 'explain',
  'unknown-survey': 'stop',
  'unknown-protocol': 'stop',
  'unknown-station': 'stop',
  'unknown-transect': 'stop',
  'station-without-stratum': 'stop',
  'unknown-stratum': 'stop',
  'repeated-row': 'stop',
  'lengths-without-count': 'stop',
  'more-lengths-than-animals': 'stop',
  'count-on-lost-transect': 'stop',
  'none-seen-but-counted': 'stop',
  // what estimates need to ask
  'stratum-area-missing': 'explain',
  'station-unresolved': 'explain',
  'transect-unresolved': 'explain',
  'partial-without-reason': 'explain',
  'lone-station-in-stratum': 'explain',
  'counted-but-no-target': 'explain',
  'targets-assumed': 'note',
  'selection-unknown': 'note',
  'selection-mixed': 'explain',
  'station-small-area': 'explain',
  // mapping files
  'mapping-invalid': 'stop',
  'mapping-file-missing': 'stop',
  'left-out-by-rule': 'note',
  'first-of-several': 'note',
} as const satisfies Record<string, 'stop' | 'explain' | 'note'>;

export type ProblemCode = keyof typeof problemSeverities;
