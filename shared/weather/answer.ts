/** Whether something is so; `unknown` where the forecast does not say. Unknown is never taken for fair. */
export type Answer = boolean | 'unknown';
