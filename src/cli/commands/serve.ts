import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type CommonOptions, commandOf, numberOption } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { listen } from '../serve/listen.ts';
import { loopbackAddress } from '../serve/loopback.ts';
import { builtScreens, type OpenHouse, openHouse } from '../serve/open-house.ts';
import { makeDemoBook } from './demo.ts';

interface ServeOptions extends CommonOptions {
  readonly host: string;
  readonly port: number;
  readonly screens: string;
  readonly demo?: true;
  readonly get?: string;
}

const usualPort = 4180;

export const serveCommand: CliCommand = {
  name: 'serve',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'serve',
      'the screens, for this computer only, until it is stopped (Ctrl-C)',
      'slateline serve --book north-reefs',
    )
      .option('--host <name>', '127.0.0.1, ::1 or localhost', '127.0.0.1')
      .option('--port <n>', '0 takes any that is free', numberOption('the port', 0, 65_535, true), usualPort)
      .option('--screens <folder>', 'where the screens were built; default: those of this program')
      .option('--demo', 'make the invented demo book first, if there is no book in the folder')
      .option('--get <address>', 'answer one address, as in /api/book, and stop')
      .action(async (options: ServeOptions) => {
        const address = loopbackAddress(options.host);
        const folder = resolve(io.cwd, options.book);
        if (options.demo && !existsSync(join(folder, 'book.sqlite'))) await makeDemoBook(io, folder);
        const screens = options.screens === undefined ? builtScreens : resolve(io.cwd, options.screens);
        const house = await openHouse(io, { folder, screens });
        try {
          if (options.get === undefined) await serveUntilStopped(io, house, options, address);
          else setExitCode(await getOnce(io, house, options, options.get));
        } finally {
          await house.close();
        }
      }),
};

async function serveUntilStopped(
  io: Io,
  house: OpenHouse,
  options: ServeOptions,
  address: string,
): Promise<void> {
  // Before anybody can know the address: a stop that comes early is a stop.
  const stopped = stopAsked();
  const listening = await listen(house.app, { address, port: options.port });
  house.setPort(listening.port);
  // What fails here is told to whoever asks for it.
  void house.warm().catch(() => {});
  const url = `http://${address.includes(':') ? `[${address}]` : address}:${listening.port}/`;
  if (options.json) {
    printJson(io, {
      command: 'serve',
      dataVersion: null,
      settings: { book: options.book, host: options.host },
      rows: [{ url, port: listening.port }],
      problems: [],
    });
  } else {
    io.stdout(`Slateline is at ${url}\n`);
    io.stdout(`It serves ${options.book} to this computer only. Ctrl-C stops it.\n`);
  }
  await stopped;
  await listening.close();
}

function stopAsked(): Promise<void> {
  return new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
}

/** For programs and tests: one answer without a port. */
async function getOnce(io: Io, house: OpenHouse, options: ServeOptions, get: string): Promise<number> {
  house.setPort(usualPort);
  const response = await house.app.request(new Request(new URL(get, `http://127.0.0.1:${usualPort}`)));
  const body = await response.text();
  const type = response.headers.get('content-type') ?? '';
  if (options.json) {
    const settings = { book: options.book, get };
    const parsed = type.startsWith('application/json') ? (JSON.parse(body) as unknown) : body;
    const row = { address: get, status: response.status, type, body: parsed };
    printJson(io, { command: 'serve', dataVersion: null, settings, rows: [row], problems: [] });
  } else io.stdout(body.endsWith('\n') ? body : `${body}\n`);
  return response.ok ? exitCodes.done : exitCodes.held;
}
