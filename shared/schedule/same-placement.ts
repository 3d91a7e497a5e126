import type { Reason, TrailStep } from './model.js';
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
    sameTrail(a.trail, b.trail)
  );
}

function sameTrail(a: readonly TrailStep[], b: readonly TrailStep[]): boolean {
  for (let i = 0; i < a.length; i++) {
    const [step, other] = [a[i]!, b[i]!];
    if (step.from !== other.from || step.to !== other.to || !sameReason(step.reason, other.reason))
      return false;
  }
  return true;
}

/** Value by value; what a reason takes over from the input is compared as the same object. */
function sameReason(a: Reason, b: Reason): boolean {
  if (a === b) return true;
  if (a.kind !== b.kind) return false;
  for (const key in a) if (a[key as 'kind'] !== b[key as 'kind']) return false;
  return true;
}
