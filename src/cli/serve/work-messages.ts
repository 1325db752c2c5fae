/** What goes to a working thread and comes back. */

import type { FailureCode } from '../../survey/failure.ts';
import type { Parameters } from '../../survey/message.ts';
import type { WorkOrder } from '../../tasks/sheets/work-orders.ts';

export interface WorkRequest {
  readonly number: number;
  readonly order: WorkOrder;
}

export type WorkMessage = { readonly number: number } & (
  | { readonly step: string }
  | { readonly text: string }
  | { readonly failure: { readonly code: FailureCode; readonly parameters: Parameters } }
  | { readonly fault: string }
);
