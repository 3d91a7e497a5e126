import type { Reason } from './model.js';
import type { Placement } from './outcome.js';

/** Whether a phase has its place at the same time with the same crew. */
export function samePlace(a: Placement, b: Placement): boolean {
  return a.start === b.start && a.finish === b.finish && a.crewIndex === b.crewIndex;
}

/** Whether one place is the other in everything that a plan says of it. */
export function samePlacement(a: Placement, b: Placement): boolean {
  return (
    samePlace(a, b) &&
    a.state === b.state &&
    a.hours === b.hours &&
    a.ready === b.ready &&
    a.trail.length === b.trail.length &&
    a.conflicts.length + b.conflicts.length === 0 &&
    sameReason(a.readyReason, b.readyReason) &&
    a.trail.every(({ from, to, reason }, i) => {
      const other = b.trail[i]!;
      return from === other.from && to === other.to && sameReason(reason, other.reason);
    })
  );
}

/** Value by value; what a reason takes over from the input is compared as the same object. */
function sameReason(a: Reason, b: Reason): boolean {
  if (a.kind !== b.kind) return false;
  for (const key in a) if (a[key as 'kind'] !== b[key as 'kind']) return false;
  return true;
}
