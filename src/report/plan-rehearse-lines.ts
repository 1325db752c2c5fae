/** The rehearsed report, for the command line: what it will be able to say, species by species, and what more days change. */

import type { RehearsalOption } from '../planning/rehearse/more-stations.ts';
import type { RehearsalStratum } from '../planning/rehearse/rehearsal-request.ts';
import type { RehearsedSpecies } from '../planning/rehearse/rehearse-survey.ts';
import { counted } from '../survey/counted.ts';
import type { Species } from '../survey/words.ts';
import { changeInWords, luckInWords, oneIn, timesInTen } from './change-words.ts';
import { formatCount, formatShare, formatShort, formatSignificant } from './numbers.ts';
import { speciesNames } from './species-names.ts';
import { type Column, textTable } from './text-table.ts';

export interface RehearsalToTell {
  readonly survey: string;
  readonly plan: string | null;
  readonly strata: readonly RehearsalStratum[];
  readonly options: readonly RehearsalOption[];
  readonly falseAlarms: readonly {
    readonly species: string;
    readonly share: number;
    readonly pairs: number;
    readonly earlierCv: number;
  }[];
  readonly bookSpecies: readonly Species[];
}

export function planRehearseLines(told: RehearsalToTell): readonly string[] {
  const [base, ...more] = told.options;
  if (base === undefined) return ['Nothing could be rehearsed.'];
  const label = (species: string) => speciesNames(told.bookSpecies)(species).label;
  const { stations, surveys, confidence, interval, seed } = base.rehearsal;
  const strata = told.strata.map((one) => `${formatCount(one.stations)} in ${one.name}`).join(', ');
  return [
    `${told.plan === null ? 'A survey' : `Plan ${told.plan}`} of ${counted(formatCount(stations), 'station')} (${strata}), carried out ${surveys === 1 ? 'once' : `${formatCount(surveys)} times`} with the densities and clumping of ${told.survey}:`,
    '',
    ...base.rehearsal.species.flatMap((one) => sentencesOf(one, told, label(one.species))),
    ...more.flatMap((option) => ['', ...gains(base, option, label)]),
    '',
    textTable(columns(told, confidence, label), base.rehearsal.species),
    '',
    `Interval: ${interval}; the middle of the rehearsed surveys. Seed ${seed}.`,
    `Told: shares of ${formatCount(surveys)} rehearsed surveys, which luck alone moves by up to ${luckInWords(surveys)} either way; more of them (--surveys) are surer.`,
    `False alarm: a change told where there is none, in pairs of surveys simulated with this clumping; ${formatShare(confidence)} promises 1 in ${formatShort(Math.round(1 / (1 - confidence)))}. Where it is more often, distrust a change that was only just told.`,
  ];
}

/** Often enough to plan on; METHODS g and common practice take 0.8. */
const often = 0.8;
/** Below this the answer is left to luck. */
const half = 0.5;

function sentencesOf(one: RehearsedSpecies, told: RehearsalToTell, name: string): readonly string[] {
  return one.changes.map((change) => {
    const what = `${changeInWords(change.factor)} of ${name}`;
    if (change.told >= often)
      return `- You could tell ${what} ${timesInTen(change.told)}.${alarmWords(one, told)}`;
    if (change.told >= half)
      return `- You could tell ${what} ${timesInTen(change.told)}; else it stays undecided.${alarmWords(one, told)}`;
    const why = whyUndecided(one, told);
    return `- ${name} will mostly stay undecided: ${changeInWords(change.factor)} is told ${timesInTen(change.told)}${why}.${alarmWords(one, told)}`;
  });
}

/** Few animals, or an earlier survey that no later one can make more certain. */
function whyUndecided(one: RehearsedSpecies, { falseAlarms, survey }: RehearsalToTell): string {
  if (one.expectedAnimals < 10)
    return ` (about ${counted(formatSignificant(one.expectedAnimals, 2), 'animal is', 'animals are')} expected in all)`;
  const earlierCv = falseAlarms.find((each) => each.species === one.species)?.earlierCv ?? 0;
  return ` (${survey} has a CV of ${formatShare(earlierCv)}, this survey of ${formatShare(one.expectedCv)})`;
}

/** Only where it is clearly more than promised. */
function alarmWords(one: RehearsedSpecies, { falseAlarms, options }: RehearsalToTell): string {
  const alarm = falseAlarms.find((each) => each.species === one.species);
  const promised = 1 - (options[0]?.rehearsal.confidence ?? 0.95);
  if (alarm === undefined || alarm.share < promised * clearly) return '';
  return ` Beware: where nothing changed, ${oneIn(alarm.share, alarm.pairs)} would tell a change.`;
}

const clearly = 1.5;

function gains(
  base: RehearsalOption,
  option: RehearsalOption,
  label: (species: string) => string,
): readonly string[] {
  const days = option.boatDays === null ? '' : `${counted(formatCount(option.boatDays), 'more boat day')}, `;
  const rows = option.rehearsal.species.flatMap((after, i) => {
    const before = base.rehearsal.species[i]!;
    const name = label(after.species);
    const cv = `CV ${formatShare(before.expectedCv)} to ${formatShare(after.expectedCv)}`;
    const told = after.changes.map((change, j) => {
      const was = before.changes[j]!;
      const noise = 2 * Math.hypot(change.simulationError, was.simulationError);
      const isSame = Math.abs(change.told - was.told) <= noise;
      const move = isSame
        ? `told about as often as before (${formatShare(change.told)})`
        : `told in ${formatShare(change.told)} instead of ${formatShare(was.told)}`;
      return `${changeInWords(change.factor)} ${move}`;
    });
    return [`- ${name}: ${[cv, ...told].join('; ')}`];
  });
  return [
    `With ${days}${formatCount(option.rehearsal.stations)} stations instead of ${formatCount(base.rehearsal.stations)}:`,
    ...rows,
  ];
}

function columns(
  { falseAlarms, options }: RehearsalToTell,
  confidence: number,
  label: (species: string) => string,
): readonly Column<RehearsedSpecies>[] {
  const number = true;
  const changes = options[0]?.rehearsal.species[0]?.changes.map((change) => change.factor) ?? [];
  return [
    { head: 'species', cell: (one) => label(one.species) },
    { head: 'per ha', cell: (one) => formatSignificant(one.densityPerHa), number },
    { head: 'animals', cell: (one) => formatSignificant(one.expectedAnimals, 2), number },
    { head: 'CV', cell: (one) => formatShare(one.expectedCv), number },
    {
      head: `${formatShare(confidence)} interval`,
      cell: (one) =>
        one.medianIntervalFactor === null
          ? '–'
          : `high ${formatSignificant(one.medianIntervalFactor, 2)} times low`,
      number,
    },
    {
      head: 'holds the truth',
      cell: (one) => (one.coverage === null ? '–' : formatShare(one.coverage)),
      number,
    },
    { head: 'none met', cell: (one) => formatShare(one.probabilityNoneSeen), number },
    ...changes.map((factor, j) => ({
      head: `${changeInWords(factor)} told`,
      cell: (one: RehearsedSpecies) => formatShare(one.changes[j]!.told),
      number,
    })),
    {
      head: 'false alarm',
      cell: (one) => {
        const alarm = falseAlarms.find((each) => each.species === one.species);
        return alarm === undefined ? '–' : oneIn(alarm.share, alarm.pairs);
      },
      number,
    },
  ];
}
