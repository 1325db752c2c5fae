/** A new survey as the first run makes it: a name, a protocol, strata and species written one on each line. */

import type { Protocol, Species, Stratum } from '../../survey/words.ts';
import type { NewSurveyRequest } from '../../tasks/sheets/survey-schemas.ts';
import { newId } from './new-id.ts';

interface Written {
  readonly name: string;
  /** ISO day or empty. */
  readonly starts: string;
  readonly protocol: Omit<Protocol, 'id'>;
  readonly strata: string;
  readonly species: string;
  readonly who: string;
}

export function newSurveyOf(written: Written): NewSurveyRequest {
  const name = written.name.trim();
  // A protocol is named after its survey: its numbers are this survey's own.
  const protocol: Protocol = { id: newId(), ...written.protocol, name: `${written.protocol.name}, ${name}` };
  const species = linesOf(written.species).map(speciesOf);
  return {
    requestId: newId(),
    base: null,
    who: written.who,
    survey: {
      id: newId(),
      name,
      protocolId: protocol.id,
      starts: written.starts || null,
      ends: null,
      purpose: null,
    },
    protocol,
    strata: linesOf(written.strata).map(stratumOf),
    species,
    targets: species.map((one) => one.id),
  };
}

function linesOf(text: string): readonly (readonly string[])[] {
  const lines = text.split('\n').map((line) => line.split(/[,;\t]/).map((part) => part.trim()));
  return lines.filter(([first]) => first !== undefined && first !== '');
}

function stratumOf([name, area]: readonly string[]): Stratum {
  const areaHa = Number(area);
  return {
    id: newId(),
    name: name!,
    habitat: null,
    areaHa: Number.isFinite(areaHa) && areaHa > 0 ? areaHa : null,
    depthMinM: null,
    depthMaxM: null,
  };
}

function speciesOf([name, code, localName]: readonly string[]): Species {
  return {
    id: newId(),
    name: name!,
    group: null,
    code: code || null,
    commonName: null,
    localName: localName || null,
    aliases: [],
    minLengthMm: null,
    maxLengthMm: null,
    depthMinM: null,
    depthMaxM: null,
    habitats: [],
  };
}
