/** Only one tab types a sheet. The others are told, and can take it over. */

export interface SheetLock {
  /** Lets another tab type. */
  readonly release: () => void;
}

export interface LockTold {
  readonly held: () => void;
  /** Another tab types it. */
  readonly elsewhere: () => void;
  /** Another tab took it from this one. */
  readonly lost: () => void;
}

export function lockSheet(
  key: string,
  told: LockTold,
  { takeOver }: { readonly takeOver: boolean },
): SheetLock {
  let release = () => {};
  const released = new Promise<void>((resolve) => {
    release = resolve;
  });
  if (!('locks' in navigator)) {
    told.held();
    return { release };
  }
  const options = takeOver ? { steal: true } : { ifAvailable: true };
  navigator.locks
    .request(`slateline-sheet-${key}`, options, (lock) => {
      if (lock === null) return told.elsewhere();
      told.held();
      return released;
    })
    .catch(told.lost);
  return { release };
}
