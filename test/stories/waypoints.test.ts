/** Stations of a plan to a receiver and back: names, distances, strangers, and positions written when asked. */

import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { readGpx } from '../../src/exchange/maps/gpx.ts';
import { demoBook, slateline, slatelineJson, temporaryFolder } from './cli-helper.ts';

const gpsbabel = 'gpsbabel';
let book = '';
let gpx = '';

beforeAll(async () => {
  book = await demoBook();
  gpx = join(temporaryFolder(), 'plan.gpx');
  await slateline('plan', 'draw', 'p', '--for', 'Lorrin 2027', '--stations', 'north flat: 4', '--book', book);
  await slateline('waypoints', '--plan', 'p', '--to', gpx, '--route', '--book', book);
});

const waypoints = (...args: readonly string[]) => slatelineJson('waypoints', ...args, '--book', book);

/** A receiver's file: the points as named, shifted north by so many metres. */
function fromReceiver(points: readonly { name: string; of: number; northM?: number }[], track = ''): string {
  const { value } = readGpx(readFileSync(gpx, 'utf8'));
  const written = points.map(({ name, of, northM = 0 }) => {
    const { latitudeDeg, longitudeDeg } = value.waypoints[of]!.position;
    return `<wpt lat="${latitudeDeg + northM / 111_000}" lon="${longitudeDeg}"><name>${name}</name></wpt>`;
  });
  const file = join(temporaryFolder(), 'back.gpx');
  writeFileSync(file, `<gpx version="1.1" creator="receiver">${written.join('')}${track}</gpx>`);
  return file;
}

describe('a receiver that writes UTF-16', () => {
  it.each(['utf-16le', 'utf-16be'] as const)('is read as one that writes UTF-8 (%s)', async (encoding) => {
    const plain = fromReceiver([{ name: 'NF01', of: 0, northM: 30 }]);
    const xml = `<?xml version="1.0" encoding="UTF-16"?>${readFileSync(plain, 'utf8')}`;
    const little = Buffer.from(`\ufeff${xml}`, 'utf16le');
    const file = join(temporaryFolder(), 'wide.gpx');
    writeFileSync(file, encoding === 'utf-16le' ? little : little.swap16());
    const told = (await waypoints('--from', file, '--plan', 'p')).rows;
    expect(told).toEqual((await waypoints('--from', plain, '--plan', 'p')).rows);
    expect(JSON.stringify(told)).toContain('NF01');
  });
});

describe('waypoints out', () => {
  it('have short names, and a route in the order of the list', () => {
    const { value, findings } = readGpx(readFileSync(gpx, 'utf8'));
    expect(findings).toEqual([]);
    expect(value.waypoints.map(({ name }) => name)).toEqual(['NF01', 'NF02', 'NF03', 'NF04']);
    expect(value.routes[0]!.points.map(({ name }) => name)).toEqual(['NF01', 'NF02', 'NF03', 'NF04']);
  });

  it('are opened by gpsbabel, point for point', ({ skip }) => {
    let answer = '';
    try {
      answer = execFileSync(gpsbabel, ['-i', 'gpx', '-f', gpx, '-o', 'unicsv', '-F', '-'], {
        encoding: 'utf8',
      });
    } catch {
      // biome-ignore lint/suspicious/noConsole: a comparison that was not made must be seen
      console.warn('SKIPPED: gpsbabel (Debian gpsbabel) does not run here; our GPX is not opened with it');
      skip();
    }
    const rows = answer.trim().split('\n').slice(1);
    const { value } = readGpx(readFileSync(gpx, 'utf8'));
    expect(rows).toHaveLength(4);
    rows.forEach((row, i) => {
      const [, latitude, longitude, name] = row.split(',');
      // gpsbabel writes six decimals: half of the last one is 6 cm.
      expect(Math.abs(Number(latitude) - value.waypoints[i]!.position.latitudeDeg)).toBeLessThan(6e-7);
      expect(Math.abs(Number(longitude) - value.waypoints[i]!.position.longitudeDeg)).toBeLessThan(6e-7);
      expect(name).toBe(`"${value.waypoints[i]!.name}"`);
    });
  });
});

describe('waypoints back', () => {
  it('meet their stations by name, by code or by nearness, with metres from the plan', async () => {
    const file = fromReceiver([
      { name: 'nf01', of: 0, northM: 12 },
      { name: 'NF-02', of: 1, northM: 4 },
      { name: '001', of: 2, northM: 30 },
    ]);
    const { rows } = await waypoints('--plan', 'p', '--from', file);
    expect(rows.map(({ by }) => by)).toEqual(['name', 'name', 'nearness', null]);
    // By hand: 12 m and 30 m north at 36.5 S, a degree being 110 970 m and not 111 000.
    expect(rows[0].distanceM).toBeCloseTo(12, 1);
    expect(rows[2].distanceM).toBeCloseTo(30, 1);
  });

  // JOB B: a planned position copied into the visited one hides where the boat was.
  it('that are the points as sent are no arrivals: a mark nearby is, and without one nothing is written', async () => {
    const file = fromReceiver([
      { name: 'NF01', of: 0 },
      { name: '014', of: 0, northM: 25 },
      { name: 'NF02', of: 1 },
    ]);
    const { rows, problems } = await waypoints('--plan', 'p', '--from', file);
    expect(rows[0]).toMatchObject({ waypoint: '014', by: 'nearness' });
    expect(rows[0].distanceM).toBeCloseTo(25, 0);
    expect(rows[1]).toMatchObject({ waypoint: 'NF02', by: 'sent', written: false });
    const messages = problems.map(({ message }) => message);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toContain('on their planned place to the metre: NF-02');
  });

  it('far from their station or without one are questions', async () => {
    const file = fromReceiver([
      { name: 'NF01', of: 0, northM: 5000 },
      { name: 'HARBOUR', of: 1, northM: 9000 },
    ]);
    const { problems } = await waypoints('--plan', 'p', '--from', file);
    const messages = problems.map(({ message }) => message);
    expect(messages[0]).toMatch(/waypoint NF01 bears the name of NF-01 and lies 4.99\d m from it/);
    expect(messages[1]).toContain('waypoint HARBOUR at 36°');
    expect(messages[1]).toContain('belongs to no station; the nearest is');
  });

  it('with a track say how near the boat came, and when', async () => {
    const { value } = readGpx(readFileSync(gpx, 'utf8'));
    const { latitudeDeg, longitudeDeg } = value.waypoints[3]!.position;
    const point = `<trkpt lat="${latitudeDeg}" lon="${longitudeDeg}"><time>2027-03-10T20:15:00Z</time></trkpt>`;
    const { rows } = await waypoints(
      '--plan',
      'p',
      '--from',
      fromReceiver([], `<trk><trkseg>${point}</trkseg></trk>`),
    );
    expect(rows[3]).toMatchObject({ waypoint: null, trackTime: '2027-03-10T20:15:00Z' });
    // Seven decimals of a degree in the file are a centimetre.
    expect(rows[3].trackDistanceM).toBeLessThan(0.01);
  });

  it('takes the waypoints of its own spares for no strangers, unless they moved', async () => {
    const file = join(temporaryFolder(), 'spares.gpx');
    await waypoints('--plan', 'p', '--to', file, '--spares');
    expect((await waypoints('--plan', 'p', '--from', file)).problems).toMatchObject([
      { code: 'waypoint-as-sent' },
    ]);
    const text = readFileSync(file, 'utf8');
    const moved = text.replace(
      /lat="(-?[\d.]+)"(?=[^>]*><name>NF05)/,
      (_, lat) => `lat="${Number(lat) + 0.01}"`,
    );
    writeFileSync(file, moved);
    const { problems } = await waypoints('--plan', 'p', '--from', file);
    expect(problems.map(({ code }) => code)).toEqual(['waypoint-as-sent', 'waypoint-without-station']);
  });

  it('of an empty or foreign file are refused', async () => {
    const empty = await waypoints('--plan', 'p', '--from', fromReceiver([]));
    expect(empty.problems[0].message).toContain('neither a waypoint nor a track');
    expect(empty.exitCode).toBe(1);
    const foreign = join(temporaryFolder(), 'x.gpx');
    writeFileSync(foreign, 'code;position');
    const refused = await waypoints('--plan', 'p', '--from', foreign);
    expect(refused.problems[0].severity).toBe('stop');
    expect(refused.exitCode).toBe(1);
  });
});

describe('arrival positions', () => {
  it('are written only when asked, into stations without one, as one signed change', async () => {
    const own = await demoBook();
    const to = ['--book', own];
    await slateline('plan', 'draw', 'p', '--for', 'Lorrin 2027', '--stations', 'north flat: 4', ...to);
    const folder = temporaryFolder();
    const tables = [
      'survey,station,stratum,date,latitude,longitude',
      'Lorrin 2027,NF-01,north flat,2027-03-10,,',
      'Lorrin 2027,NF-02,north flat,2027-03-10,-36.48,-128.0',
    ];
    writeFileSync(join(folder, 'stations.csv'), `${tables.join('\n')}\n`);
    expect((await slateline('import', folder, ...to)).exitCode).toBe(0);
    const file = fromReceiver([
      { name: 'NF01', of: 0, northM: 10 },
      { name: 'NF02', of: 1, northM: 6 },
      { name: 'NF03', of: 2, northM: 9 },
    ]);
    const read = await slatelineJson('waypoints', '--plan', 'p', '--from', file, ...to);
    expect(read.rows.every(({ written }) => !written)).toBe(true);
    const args = ['waypoints', '--plan', 'p', '--from', file, '--write', '--by', 'Recorder A', ...to];
    const { rows, problems } = await slatelineJson(...args);
    expect(rows.filter(({ written }) => written).map(({ station }) => station)).toEqual(['NF-01']);
    expect(problems.map(({ code }) => code)).toEqual([
      'waypoint-station-has-position',
      'waypoint-station-not-entered',
    ]);
    const { stdout } = await slateline('history', '--station', 'NF-01', ...to);
    expect(stdout).toContain('Recorder A');
    expect(stdout).toContain('arrival positions from waypoints of back.gpx');
  });
});
