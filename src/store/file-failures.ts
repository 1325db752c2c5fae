/** Turns what the file system says into a failure a person can act on. Anything unknown stays as it was thrown. */

import { Failure } from '../survey/failure.ts';

export function asFileFailure(error: unknown, folder: string): unknown {
  if (!(error instanceof Error) || !('code' in error)) return error;
  switch (error.code) {
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return new Failure('read-only', { folder }, error);
    case 'ENOSPC':
    case 'EDQUOT':
      return new Failure('disk-full', { folder }, error);
    case 'EBUSY':
      return new Failure('book-locked', { folder }, error);
    case 'ENOTDIR':
    case 'EEXIST':
    case 'EIO':
    case 'ENAMETOOLONG':
      return new Failure('disk-fault', { folder, detail: error.message }, error);
    default:
      return error;
  }
}
