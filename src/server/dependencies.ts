/** Everything of the outside world that the server touches, passed in by `cli`, so that tests can fix it. */

import type { SheetStore } from '../survey/acts.ts';
import type { PhotoBytes } from '../tasks/sheets/photo.ts';
import type { WorkOrder } from '../tasks/sheets/work-orders.ts';

export interface ServerDependencies {
  readonly store: SheetStore;
  readonly work: Work;
  readonly photos: PhotoShelf;
  /** A built file by its address from `/`; null when there is none. Nothing else is ever read from disk for an address. */
  readonly screenFile: (path: string) => Promise<ScreenFile | null>;
  /** The port that browsers see, once it is known. */
  readonly port: () => number;
  readonly now: () => Date;
  /** The day on the wall of this computer, ISO form. */
  readonly today: () => string;
  readonly newId: () => string;
  /** SHA-256 in small hexadecimal digits. */
  readonly sha256: (content: string | Uint8Array) => string;
  readonly pause: (ms: number) => Promise<void>;
  readonly device: string;
  readonly version: string;
  /** For faults of ours; people get one sentence. */
  readonly log: (error: unknown) => void;
}

/** Work on whole surveys, done where it cannot hold up a save. */
export interface Work {
  /** Reading: the same order at the same data version gives the same text. */
  read(order: WorkOrder): Promise<string>;
  /** Long work that can be given up: in a thread of its own, ended when the signal says so. */
  long(order: WorkOrder, options: LongWork): Promise<string>;
}

export interface LongWork {
  readonly signal: AbortSignal;
  readonly onStep: (step: string) => void;
}

/** The bytes of photos; what is known of them stands in the store. */
export interface PhotoShelf {
  read(sha256: string): Promise<Picture | null>;
  /** Keeps the bytes whole under their checksum. On disk when it returns; kept already, nothing is written. */
  keep(photo: PhotoBytes, bytes: Uint8Array): Promise<void>;
}

export interface Picture {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: PhotoBytes['type'];
}

export interface ScreenFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: string;
}
