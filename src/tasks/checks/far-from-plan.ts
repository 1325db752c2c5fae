import { misplacedCheck } from './misplaced-stations.ts';

/** A station away from its plan, and no usual slip of the pen explains it. */
export const check = misplacedCheck('far-from-plan', null, 'plan');
