import { cpSync, existsSync, renameSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder that many tests begin with: made by the first that asks in a run of the tests, and copied for each. */
export async function copyOfMadeOnce(
  name: string,
  { make, to }: { readonly make: (folder: string) => unknown; readonly to: string },
): Promise<void> {
  const made = join(tmpdir(), `made-once-${name}`);
  if (!existsSync(made)) {
    const own = `${made}-${process.pid}`;
    await make(own);
    giveToAll(own, made);
  }
  cpSync(made, to, { recursive: true });
}

function giveToAll(own: string, made: string): void {
  try {
    renameSync(own, made);
  } catch (error) {
    // Another worker was first: its folder is as good.
    if (!existsSync(made)) throw error;
  }
}
