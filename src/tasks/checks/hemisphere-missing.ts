import { misplacedCheck } from './misplaced-stations.ts';

/** A position that lies right in another hemisphere: the minus or the letter was left out. */
export const check = misplacedCheck('hemisphere-missing', 'hemisphere-missing');
