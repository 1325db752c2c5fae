import { Failure } from '../../survey/failure.ts';

/** The address to listen at. Throws a Failure for any that another computer could reach. */
export function loopbackAddress(host: string): string {
  const name = host
    .trim()
    .toLowerCase()
    .replace(/^\[(.*)\]$/, '$1');
  // "localhost" can be made to mean anything in a file of the system; its address cannot.
  if (name === 'localhost' || name === '127.0.0.1') return '127.0.0.1';
  if (name === '::1') return '::1';
  throw new Failure('not-loopback', { host });
}
