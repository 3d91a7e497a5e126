import type { KeyboardEvent } from 'react';
import { readStop } from '../board/layout/stops.js';
import { stepOfKey } from './steps.js';
import type { Moving } from './use-moving.js';

/** Keys while a phase is picked up, and the key that picks up the one in focus. @returns whether the key was meant so. */
export function moveByKey(
  { key, shiftKey, ctrlKey, metaKey, altKey }: KeyboardEvent,
  stop: string,
  moving: Moving,
): boolean {
  const of = readStop(stop);
  if (of?.kind !== 'bar' || ctrlKey || metaKey || altKey) return false;
  if (moving.tried?.phaseId !== of.phaseId) {
    const picks = (key === 'm' || key === 'M') && moving.canMove(of.phaseId);
    if (picks) moving.pickUp(of.phaseId);
    return picks;
  }
  const step = stepOfKey(key, shiftKey);
  if (step) moving.step(step.step, step.direction);
  else if (key === 'Enter' || key === ' ') moving.drop();
  else if (key === 'Escape') moving.giveUp();
  else return false;
  return true;
}
