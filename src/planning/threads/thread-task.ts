import type { ImproveProgress, ImproveResult } from '../../../shared/schedule/improve/improve.js';
import type { ObjectiveWeights } from '../../../shared/schedule/improve/objective.js';
import type { RiskModel } from '../../../shared/schedule/risk/risk-model.js';
import type { Risk } from '../../../shared/schedule/risk/risk.js';
import type { PlanInput } from '../../../shared/schedule/model.js';

/** A search for a better plan, bounded by time. */
export interface ImproveTask {
  readonly kind: 'improve';
  readonly input: PlanInput;
  readonly seed: number;
  readonly seconds: number;
  readonly weights: ObjectiveWeights;
}

/** An estimate of how sure a plan is. */
export interface RiskTask {
  readonly kind: 'risk';
  readonly input: PlanInput;
  readonly model: RiskModel;
  readonly seed: number;
  readonly samples: number;
}

/** What a thread can be asked for. */
export type ThreadTask = ImproveTask | RiskTask;

/** What a thread answers with, and says on the way, by the kind of its task. */
export interface ThreadAnswers {
  readonly improve: { readonly result: ImproveResult; readonly progress: ImproveProgress };
  readonly risk: { readonly result: Risk; readonly progress: number };
}

/** What a thread is started with: its task, and a word of memory through which it is told to stop. */
export interface ThreadData {
  readonly task: ThreadTask;
  readonly stop: Int32Array<SharedArrayBuffer>;
}

/** What a thread says. */
export type ThreadMessage =
  | { readonly kind: 'progress'; readonly progress: unknown; readonly seconds: number }
  | { readonly kind: 'result'; readonly result: unknown };
