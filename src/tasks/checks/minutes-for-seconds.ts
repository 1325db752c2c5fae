import { misplacedCheck } from './misplaced-stations.ts';

/** A position that lies right in another notation: 45.30 minutes typed as 45 minutes 30 seconds. */
export const check = misplacedCheck('minutes-for-seconds', 'minutes-for-seconds');
