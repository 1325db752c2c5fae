/** The frame of the work: strata, protocols, species, surveys, targets, limits and mappings as rows, and back. */

import type {
  Answer,
  Mapping,
  Protocol,
  SizeLimit,
  Species,
  Stratum,
  Survey,
  Target,
} from '../survey/words.ts';
import type {
  AnswerRow,
  MappingRow,
  ProtocolRow,
  SizeLimitRow,
  SpeciesRow,
  StratumRow,
  SurveyRow,
  TargetRow,
} from './book-tables.ts';

export function stratumRow(stratum: Stratum): StratumRow {
  return {
    id: stratum.id,
    name: stratum.name,
    habitat: stratum.habitat,
    area_ha: stratum.areaHa,
    depth_min_m: stratum.depthMinM,
    depth_max_m: stratum.depthMaxM,
  };
}

export function stratumOf(row: StratumRow): Stratum {
  return {
    id: row.id,
    name: row.name,
    habitat: row.habitat,
    areaHa: row.area_ha,
    depthMinM: row.depth_min_m,
    depthMaxM: row.depth_max_m,
  };
}

export function protocolRow(protocol: Protocol): ProtocolRow {
  return {
    id: protocol.id,
    name: protocol.name,
    layout: protocol.layout,
    transects_per_station: protocol.transectsPerStation,
    length_m: protocol.lengthM,
    width_m: protocol.widthM,
    gap_m: protocol.gapM,
    measure_first: protocol.measureFirst,
    length_unit: protocol.lengthUnit,
  };
}

export function protocolOf(row: ProtocolRow): Protocol {
  return {
    id: row.id,
    name: row.name,
    layout: row.layout as Protocol['layout'],
    transectsPerStation: row.transects_per_station,
    lengthM: row.length_m,
    widthM: row.width_m,
    gapM: row.gap_m,
    measureFirst: row.measure_first,
    lengthUnit: row.length_unit as Protocol['lengthUnit'],
  };
}

export function speciesRow(species: Species): SpeciesRow {
  return {
    id: species.id,
    name: species.name,
    group_name: species.group,
    code: species.code,
    common_name: species.commonName,
    local_name: species.localName,
    aliases: JSON.stringify(species.aliases),
    min_length_mm: species.minLengthMm,
    max_length_mm: species.maxLengthMm,
    depth_min_m: species.depthMinM,
    depth_max_m: species.depthMaxM,
    habitats: JSON.stringify(species.habitats),
  };
}

export function speciesOf(row: SpeciesRow): Species {
  return {
    id: row.id,
    name: row.name,
    group: row.group_name,
    code: row.code,
    commonName: row.common_name,
    localName: row.local_name,
    aliases: JSON.parse(row.aliases),
    minLengthMm: row.min_length_mm,
    maxLengthMm: row.max_length_mm,
    depthMinM: row.depth_min_m,
    depthMaxM: row.depth_max_m,
    habitats: JSON.parse(row.habitats),
  };
}

export function surveyRow(survey: Survey): SurveyRow {
  return {
    id: survey.id,
    name: survey.name,
    protocol_id: survey.protocolId,
    starts: survey.starts,
    ends: survey.ends,
    purpose: survey.purpose,
  };
}

export function surveyOf(row: SurveyRow): Survey {
  return {
    id: row.id,
    name: row.name,
    protocolId: row.protocol_id,
    starts: row.starts,
    ends: row.ends,
    purpose: row.purpose,
  };
}

export function targetRow(target: Target): TargetRow {
  return { id: target.id, survey_id: target.surveyId, species_id: target.speciesId };
}

export function targetOf(row: TargetRow): Target {
  return { id: row.id, surveyId: row.survey_id, speciesId: row.species_id };
}

export function sizeLimitRow(limit: SizeLimit): SizeLimitRow {
  return { id: limit.id, species_id: limit.speciesId, minimum_mm: limit.minimumMm, source: limit.source };
}

export function sizeLimitOf(row: SizeLimitRow): SizeLimit {
  return { id: row.id, speciesId: row.species_id, minimumMm: row.minimum_mm, source: row.source };
}

export function mappingRow(mapping: Mapping): MappingRow {
  return { id: mapping.id, name: mapping.name, content: mapping.content };
}

export function mappingOf(row: MappingRow): Mapping {
  return { id: row.id, name: row.name, content: row.content };
}

export function answerRow({ problemKey, answeredAt, ...answer }: Answer): AnswerRow {
  const { id, code, value, answer: said, who, why } = answer;
  return { id, problem_key: problemKey, code, value, answer: said, who, why, answered_at: answeredAt };
}

export function answerOf({ problem_key, answered_at, ...row }: AnswerRow): Answer {
  const { id, code, value, answer, who, why } = row;
  return { id, problemKey: problem_key, code, value, answer, who, why, answeredAt: answered_at };
}
