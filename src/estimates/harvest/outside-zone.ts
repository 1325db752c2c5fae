import type { SurveyInHand } from '../../survey/observation.ts';

/** The name under which the stations outside a zone stand together. */
export function outsideOf(zone: string): string {
  return `outside ${zone}`;
}

/** The survey with two zones only: the one named, and all that lies outside it. */
export function splitAtZone(survey: SurveyInHand, zone: string): SurveyInHand {
  const stations = survey.stations.map((station) => ({
    ...station,
    record: { ...station.record, zone: station.record.zone === zone ? zone : outsideOf(zone) },
  }));
  return { ...survey, stations };
}
