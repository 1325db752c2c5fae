import { misplacedCheck } from './misplaced-stations.ts';

/** A position that lies right with latitude and longitude exchanged. */
export const check = misplacedCheck('latitude-longitude-exchanged', 'latitude-longitude-exchanged');
