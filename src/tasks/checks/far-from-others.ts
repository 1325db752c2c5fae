import { misplacedCheck } from './misplaced-stations.ts';

/** A station without a plan, alone and far from all the others, and no usual slip of the pen explains it. */
export const check = misplacedCheck('far-from-others', null, 'others');
