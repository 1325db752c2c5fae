import { misplacedCheck } from './misplaced-stations.ts';

/** A position that lies right with two neighbouring digits exchanged: 17.570 for 17.750. */
export const check = misplacedCheck('digits-exchanged', 'digits-exchanged');
