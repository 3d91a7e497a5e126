import type {
  ClearanceState,
  HookupState,
  InspectionState,
  JobState,
  ReadingStage,
} from '../api/documents.js';

/** How far an inspection is. */
export const INSPECTION_WORDS: Readonly<Record<InspectionState, string>> = {
  needed: 'to be requested',
  requested: 'requested',
  booked: 'booked',
  passed: 'passed',
  failed: 'failed',
};

/** How far a clearance is. */
export const CLEARANCE_WORDS: Readonly<Record<ClearanceState, string>> = {
  needed: 'to be requested',
  requested: 'requested',
  cleared: 'cleared',
};

/** How far a job is. */
export const JOB_WORDS: Readonly<Record<JobState, string>> = {
  entered: 'entered, not started',
  running: 'running',
  done: 'done',
  cancelled: 'cancelled',
};

/** How far a hookup is. */
export const HOOKUP_WORDS: Readonly<Record<HookupState, string>> = {
  waiting: 'not ready',
  ready: 'ready: book a day',
  booked: 'booked',
  done: 'done',
};

/** When in the work a cable reading is taken. */
export const STAGE_WORDS: Readonly<Record<ReadingStage, string>> = {
  received: 'as received',
  laid: 'laid, before anything covers it',
  covered: 'covered',
  beforeHookup: 'before hookup',
};
