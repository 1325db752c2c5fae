/** Everything of the outside world that a command may touch, passed in so that tests can fix it. */
export interface Io {
  readonly stdout: (text: string) => void;
  /** Messages and progress. */
  readonly stderr: (text: string) => void;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly cwd: string;
  readonly now: () => Date;
  /** Makes identities (UUIDv7). */
  readonly newId: () => string;
  /** From now on identities are greater than this one; where they are made by a clock. */
  readonly continueAfter?: (identity: string) => void;
  readonly device: string;
  readonly user: string;
  /** True when stderr is a terminal: only then is progress redrawn. */
  readonly isTerminal: boolean;
}
