import type { AddressInfo } from 'node:net';
import { createAdaptorServer } from '@hono/node-server';
import type { App } from '../../server/create-app.ts';
import { Failure } from '../../survey/failure.ts';

export interface Listening {
  readonly port: number;
  /** Lets what has begun end, within a few seconds. */
  close(): Promise<void>;
}

export async function listen(
  app: App,
  { address, port }: { readonly address: string; readonly port: number },
): Promise<Listening> {
  const server = createAdaptorServer({ fetch: (request) => app.request(request) });
  await new Promise<void>((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) =>
      reject(error.code === 'EADDRINUSE' ? new Failure('port-taken', { port: String(port) }, error) : error),
    );
    server.listen(port, address, resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    close: async () => {
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      await app.idle();
      if ('closeAllConnections' in server) server.closeAllConnections();
      await closed;
    },
  };
}
