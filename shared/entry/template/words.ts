/** Material hatch of a phase, as drawings show it. */
export const HATCHES = [
  'earth',
  'concrete',
  'masonry',
  'mesh',
  'mortar',
  'stone',
  'sealant',
  'electrical',
  'none',
] as const;
/** See {@link HATCHES}. */
export type Hatch = (typeof HATCHES)[number];

/** Who does a phase; a wait has none. */
export const TRADES = ['labour', 'mason', 'cable', 'electrician', 'office', 'authority'] as const;
/** See {@link TRADES}. */
export type Trade = (typeof TRADES)[number];

/** Kinds of a link. */
export const LINK_KINDS = ['finishStart', 'startStart', 'finishFinish', 'startFinish'] as const;
/** See {@link LINK_KINDS}. */
export type LinkKind = (typeof LINK_KINDS)[number];

/** Whether a lag is counted in the successor's working time or by the clock. */
export const LAG_IN = ['working', 'elapsed'] as const;
/** See {@link LAG_IN}. */
export type LagIn = (typeof LAG_IN)[number];

/** Kinds of a hold point. */
export const HOLD_POINT_KINDS = ['check', 'inspection', 'clearance', 'cure', 'reading'] as const;
/** See {@link HOLD_POINT_KINDS}. */
export type HoldPointKind = (typeof HOLD_POINT_KINDS)[number];

/** What a hold point gates. */
export const GATES = ['start', 'finish'] as const;
/** See {@link GATES}. */
export type Gate = (typeof GATES)[number];

/** Kinds of a clearance. */
export const CLEARANCE_KINDS = ['permit', 'markOut', 'material'] as const;
/** See {@link CLEARANCE_KINDS}. */
export type ClearanceKind = (typeof CLEARANCE_KINDS)[number];

/** When a heating set is tested. */
export const READING_STAGES = ['received', 'laid', 'covered', 'beforeHookup'] as const;
/** See {@link READING_STAGES}. */
export type ReadingStage = (typeof READING_STAGES)[number];

/** Whether a phase must fit one stretch of working time or may pause. */
export const CONTINUITIES = ['continuous', 'interruptible'] as const;
/** See {@link CONTINUITIES}. */
export type Continuity = (typeof CONTINUITIES)[number];
