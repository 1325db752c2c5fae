import { Option } from 'commander';
import { strataLines } from '../../report/strata-lines.ts';
import { Failure } from '../../survey/failure.ts';
import type { MaskReason } from '../../tasks/maps/book-ground.ts';
import { type BringResult, bringStrata } from '../../tasks/maps/bring-strata.ts';
import { mapFeatures } from '../../tasks/maps/map-features.ts';
import type { MapAreaRole } from '../../tasks/maps/new-areas.ts';
import { type StrataRow, strataRows } from '../../tasks/maps/strata-rows.ts';
import { acceptanceOption, type CommonOptions, commandOf } from '../command.ts';
import type { CliCommand } from '../commands.ts';
import { exitCodes } from '../exit-codes.ts';
import type { Io } from '../io.ts';
import { printJson } from '../json-output.ts';
import { withBook } from '../open.ts';
import { problemLines } from '../print-problems.ts';
import { readMapFile } from '../read-map-file.ts';
import { today } from '../today.ts';
import { writeMapFile } from '../write-map-file.ts';

interface StrataOptions extends CommonOptions {
  readonly from?: string;
  readonly to?: string;
  readonly nameField?: string;
  readonly role?: MapAreaRole;
  readonly reason?: MaskReason;
  readonly freeze?: true;
  readonly withdraw?: string;
  readonly dryRun?: true;
  readonly accept?: { who: string; why: string };
  readonly who?: string;
}

export const strataCommand: CliCommand = {
  name: 'strata',
  define: (io, setExitCode) =>
    commandOf(
      io,
      'strata',
      'strata, zones and masks: list them, bring them from a map, freeze them, write them back',
      'slateline strata --from reef-map.gpkg --freeze --book north-reefs',
    )
      .option('--from <file>', 'bring the areas of a map: GeoJSON, KML or GeoPackage on WGS84')
      .option('--to <file>', 'write the areas of the book to a map file, .geojson or .gpkg')
      .option('--name-field <field>', 'the field of the map that holds the names')
      .addOption(
        new Option(
          '--role <role>',
          'what the areas are (default: as the map says, else strata); with --withdraw, which of one name',
        ).choices(['stratum', 'zone', 'mask']),
      )
      .addOption(
        new Option('--reason <why>', 'why a mask is no ground').choices(['land', 'closed', 'too deep']),
      )
      .option('--freeze', 'fix the borders as of today: those of the map, or without --from all of the book')
      .option('--withdraw <name>', 'take an area off the map of the book; it stays in the history')
      .option('--dry-run', 'read and check, write nothing')
      .option('--accept <who: why>', 'let frozen strata change, by name and reason', acceptanceOption)
      .option('--who <name>', 'who stands for this in the history', io.user)
      .action(async (options: StrataOptions) => {
        setExitCode(await strata(options, io));
      }),
};

async function strata(options: StrataOptions, io: Io): Promise<number> {
  const changes = options.from !== undefined || options.freeze === true || options.withdraw !== undefined;
  return withBook(io, options.book, async (store) => {
    const result = changes ? await bring(options, io, store) : null;
    const stopped = result?.problems.some(({ severity }) => severity === 'stop') ?? false;
    const rows = result?.rows ?? (await strataRows(store));
    if (options.to !== undefined && !stopped) writeMapFile(io, options.to, await mapFeatures(store));
    if (options.json) {
      const { json: _, ...settings } = options;
      const dataVersion = await store.dataVersion();
      printJson(io, { command: 'strata', dataVersion, settings, rows, problems: result?.problems ?? [] });
    } else printForPeople(io, options, { rows, result, stopped });
    return stopped ? exitCodes.held : exitCodes.done;
  });
}

type OpenStore = Parameters<typeof bringStrata>[1]['store'];

async function bring(options: StrataOptions, io: Io, store: OpenStore): Promise<BringResult> {
  const read =
    options.from === undefined ? null : readMapFile(options.from, io.cwd, options.nameField ?? null);
  const file =
    read === null
      ? null
      : { name: read.name, features: read.value, role: options.role ?? null, reason: options.reason ?? null };
  const what = options.from ?? (options.withdraw === undefined ? 'freeze' : `withdraw ${options.withdraw}`);
  const result = await bringStrata(
    {
      file,
      withdraw: options.withdraw ?? null,
      withdrawRole: options.role ?? null,
      readFindings: read?.findings ?? [],
      freezeOn: options.freeze ? today(io) : null,
      acceptance: options.accept ?? null,
      dryRun: options.dryRun === true,
      today: today(io),
    },
    {
      store,
      signature: {
        who: options.who ?? io.user,
        at: io.now().toISOString(),
        device: io.device,
        why: `strata: ${what}`,
      },
      newId: io.newId,
    },
  );
  if (result.masksWithoutReason > 0) {
    throw new Failure('mask-reason-missing', { count: result.masksWithoutReason });
  }
  return result;
}

function printForPeople(
  io: Io,
  options: StrataOptions,
  shown: {
    readonly rows: readonly StrataRow[];
    readonly result: BringResult | null;
    readonly stopped: boolean;
  },
): void {
  for (const line of problemLines(shown.result?.problems ?? [])) io.stderr(`${line}\n`);
  io.stdout(`${strataLines(shown.rows).join('\n')}\n`);
  if (shown.stopped) io.stdout('\nNothing was written: mend the stops above and bring the map again.\n');
  else if (shown.result !== null) {
    const names = shown.result.newStrata;
    if (names.length > 0) io.stdout(`\nNew strata: ${names.join(', ')}.\n`);
    io.stdout(options.dryRun ? '\nDry run: nothing was written.\n' : `\nWritten to ${options.book}.\n`);
  }
  if (options.to !== undefined && !shown.stopped) io.stdout(`\nThe map is in ${options.to}.\n`);
}
