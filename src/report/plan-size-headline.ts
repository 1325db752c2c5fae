/** The answer of `plan size` in a few sentences. */

import { changeInWords, fallInWords, riseInWords, timesInTen } from './change-words.ts';
import { formatCount, formatShare } from './numbers.ts';
import { effortInWords } from './plan-size-effort.ts';
import type { NameOf, SizeOfSpecies, SizeSettings, SizeToTell } from './plan-size-shapes.ts';

export function sizeHeadline(size: SizeToTell, settings: SizeSettings, nameOf: NameOf): readonly string[] {
  const { need, pilot } = size;
  const decided = size.species.find((one) => one.subject.name === need?.species);
  const beyond = size.species.filter((one) => one.stations === null);
  const lines: string[] = [];
  if (need !== null && decided !== undefined && !need.isEach) {
    const several = size.species.length > 1 ? `; ${nameOf(need.species)} needs most` : '';
    lines.push(
      `About ${effortInWords(need.stations, settings)}, ${aim(decided, settings, nameOf(need.species))}${several}.`,
    );
  }
  if (beyond.length > 0) lines.push(...unreachable(beyond, size, settings, nameOf));
  const reach = reachLine(size, settings, nameOf);
  if (reach !== null) lines.push(reach);
  const { stationsBestSplit, stations, stationsEach } = decided ?? {};
  const usual = settings.goal === 'change' && pilot !== null ? stationsEach : stations;
  // Said with the species itself where the earlier survey stands in the way.
  if (stations != null && stationsBestSplit && usual && stationsBestSplit < 0.9 * usual) {
    const each = settings.goal === 'change' && pilot !== null ? ' in each of two surveys' : '';
    lines.push(
      `With the stations put where ${nameOf(need!.species)} is most uneven (plan allocate), about ${formatCount(stationsBestSplit)}${each} would do instead of ${formatCount(usual)}; other species then get less.`,
    );
  }
  return lines;
}

/** A change that no number of later stations tells, because the earlier survey was too uncertain itself. */
function unreachable(
  beyond: readonly SizeOfSpecies[],
  size: SizeToTell,
  settings: SizeSettings,
  nameOf: NameOf,
): readonly string[] {
  if (beyond.length > 3 && size.pilot !== null)
    return [unreachableTogether(beyond, size.pilot.survey, settings)];
  const most = formatCount(settings.mostTried);
  return beyond.flatMap((one) => {
    const name = nameOf(one.subject.name);
    const what = changeInWords(one.target);
    if (size.pilot === null || one.subject.pilotCv === null)
      return [`${name}: ${what} is not told reliably with ${most} stations, the most tried.`];
    const why = `against ${size.pilot.survey} not even ${most} stations tell ${what} ${timesInTen(settings.power)}: that survey itself has a CV of ${formatShare(one.subject.pilotCv)} (${formatShare(one.subject.pilotCv * one.subject.factor)} to count on) from ${formatCount(size.pilot.stations)} stations`;
    const each =
      one.stationsEach === null
        ? `nor would two new surveys of ${most} stations each`
        : `two new surveys of about ${effortInWords(one.stationsEach, settings)} each would`;
    const split = one.stationsBestSplit;
    const better =
      split === null || (one.stationsEach !== null && split >= 0.9 * one.stationsEach)
        ? ''
        : `; with the stations put where ${name} is most uneven (plan allocate), two of about ${effortInWords(split, settings)}`;
    return [
      `${name}: ${why}; ${each}${better}${one.stationsEach === null && better !== '' ? ' would' : ''}.`,
    ];
  });
}

/** Of many species in one sentence: the table has the rest. */
function unreachableTogether(
  beyond: readonly SizeOfSpecies[],
  survey: string,
  settings: SizeSettings,
): string {
  const cvs = beyond.map((one) => one.subject.pilotCv ?? 0);
  const between = `${formatShare(Math.min(...cvs))} to ${formatShare(Math.max(...cvs))}`;
  return `Against ${survey} not even ${formatCount(settings.mostTried)} stations tell the change wanted ${timesInTen(settings.power)} for ${beyond.length} of the species: that survey itself was too uncertain (CV ${between}). The last column tells what two new surveys would need.`;
}

function aim(one: SizeOfSpecies, { goal, power, confidence }: SizeSettings, name: string): string {
  if (goal === 'cv') return `for a CV of ${formatShare(one.target)} for ${name}`;
  if (goal === 'margin')
    return `for a ${formatShare(confidence)} interval of ${formatShare(one.target)} either way for ${name}`;
  return `to tell ${changeInWords(one.target)} of ${name} ${timesInTen(power)}`;
}

function reachLine(size: SizeToTell, settings: SizeSettings, nameOf: NameOf): string | null {
  const { reach, need, pilot } = size;
  if (reach === null || (need !== null && !need.isEach && reach >= need.stations)) return null;
  const decided = size.species.find((one) => one.subject.name === need?.species) ?? size.species[0]!;
  const row = decided.rows.find((one) => one.stations === reach);
  if (row === undefined) return null;
  const name = nameOf(decided.subject.name);
  const against = pilot === null ? 'between two such surveys' : `against ${pilot.survey}`;
  const isRise = settings.goal === 'change' && decided.target > 1;
  const smallest = isRise
    ? `smallest rise you could tell ${against} is to ${riseInWords(row.riseAssured)} what it was`
    : `smallest fall you could tell ${against} is ${fallInWords(row.fallAssured)}`;
  const told = row.told === null ? '' : ` (${changeInWords(decided.target)} ${timesInTen(row.told)})`;
  return `With ${effortInWords(reach, settings)}: CV ${formatShare(row.cvAssured)} for ${name}, and the ${smallest}${told}.`;
}
