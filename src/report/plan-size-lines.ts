/** How many stations, for the command line: the answer first, then who needs what, then what more or fewer would give. */

import { luckInWords, timesInTen } from './change-words.ts';
import { formatCount, formatShare, formatShort } from './numbers.ts';
import { effortInWords } from './plan-size-effort.ts';
import { sizeHeadline } from './plan-size-headline.ts';
import type { NameOf, SizeOfSpecies, SizeSettings, SizeToTell } from './plan-size-shapes.ts';
import { curveColumns, needColumns } from './plan-size-tables.ts';
import { speciesNames } from './species-names.ts';
import { textTable } from './text-table.ts';

export function planSizeLines(size: SizeToTell, settings: SizeSettings): readonly string[] {
  if (size.species.length === 0) return ['Nothing can be planned from these numbers.'];
  const labels = speciesNames(size.bookSpecies);
  const nameOf: NameOf = (species) => labels(species).label;
  return [
    ...(settings.decision === null ? [] : [`To decide: ${settings.decision}`, '']),
    ...sizeHeadline(size, settings, nameOf),
    '',
    basis(size, settings),
    '',
    textTable(needColumns(size, settings, nameOf), size.species),
    ...tradeOff(size, settings, nameOf),
    ...transectLines(size, nameOf),
    ...curvesShown(size).flatMap((one) => [
      '',
      `${nameOf(one.subject.name)}: what a number of stations gives`,
      '',
      textTable(curveColumns(size, settings, one.target > 1 && settings.goal === 'change'), one.rows),
    ]),
    '',
    ...legend(size, settings),
  ];
}

function basis(size: SizeToTell, settings: SizeSettings): string {
  if (size.pilot === null)
    return 'From typed values, taken as they stand; nothing says how uncertain they are.';
  return `From ${size.pilot.survey}: ${formatCount(size.pilot.stations)} stations, split over the strata as there. Large enough in ${formatShare(settings.assurance)} of such pilots.`;
}

/** With several species: each need as a choice, and who is served by it. */
function tradeOff(size: SizeToTell, settings: SizeSettings, nameOf: NameOf): readonly string[] {
  const needOf = (one: SizeOfSpecies) => one.stations ?? one.stationsEach;
  const needs = size.species.flatMap((one) => needOf(one) ?? []);
  const choices = [...new Set(needs)].sort((a, b) => a - b);
  if (size.species.length < 2 || choices.length < 2) return [];
  const lines = choices.map((stations) => {
    const served = size.species.filter((one) => (needOf(one) ?? Infinity) <= stations);
    const left = size.species.filter((one) => !served.includes(one));
    const not = left.length === 0 ? '' : `; not for ${namesOf(left, nameOf)}`;
    return `  ${effortInWords(stations, settings)}: enough for ${namesOf(served, nameOf)}${not}`;
  });
  const each = size.species.some((one) => one.stations === null)
    ? ', two surveys of each size where the earlier one does not serve'
    : '';
  return ['', `What is given up with fewer stations${each}:`, ...lines];
}

/** How many belts at a station pay, where both costs were given. */
function transectLines({ species }: SizeToTell, nameOf: NameOf): readonly string[] {
  const lines = species.flatMap(({ subject, transects }) => {
    if (transects === null) return [];
    const { now, best, likeness, cvNowOverBest } = transects;
    const gain = cvNowOverBest - 1;
    const better =
      best === now || gain < 0.01
        ? `${formatCount(now)}, as laid before, are as good as any`
        : `${formatCount(best)} would serve best; the ${formatCount(now)} laid before make the CV ${formatShare(gain)} larger`;
    return [
      `  ${nameOf(subject.name)}: ${better} (${formatShare(likeness)} of the variance of transects lies between stations)`,
    ];
  });
  return lines.length === 0 ? [] : ['', 'Transects at a station, for the same money:', ...lines];
}

function namesOf(some: readonly SizeOfSpecies[], nameOf: NameOf): string {
  return some.length > 4 ? `${some.length} species` : some.map((one) => nameOf(one.subject.name)).join(', ');
}

/** The curves of few species in full; of many the one that decides, so that the answer stays in sight. */
function curvesShown({ species, need }: SizeToTell): readonly SizeOfSpecies[] {
  if (species.length <= 3) return species;
  return [species.find((one) => one.subject.name === need?.species) ?? species[0]!];
}

function legend(size: SizeToTell, settings: SizeSettings): readonly string[] {
  const { assurance, confidence, power, simulations } = settings;
  const against =
    size.pilot === null ? 'a first survey of the same size' : `the density of ${size.pilot.survey}`;
  return [
    ...(size.pilot === null
      ? []
      : [
          `CV: if the spread was seen rightly. CV to count on: in ${formatShare(assurance)} of such pilots no worse.`,
        ]),
    `Fall (or rise) told, to: the smallest change, as a share of ${against}, told ${timesInTen(power)} at ${formatShare(confidence)} (formula, log ratio).`,
    ...(settings.goal === 'change'
      ? [
          `Wanted change told, false alarm: ${formatShort(simulations)} simulated pairs of surveys with the clumping to count on, whose shares luck alone moves by up to ${luckInWords(simulations)}; false alarm is a change reported where there was none, which should be 1 in ${formatShort(Math.round(1 / (1 - confidence)))}.`,
        ]
      : []),
  ];
}
