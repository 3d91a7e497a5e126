import type { Place } from './path.js';

export const plus = (a: Place, b: Place): Place => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
export const minus = (a: Place, b: Place): Place => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const times = (a: Place, by: number): Place => ({ x: a.x * by, y: a.y * by, z: a.z * by });
export const dot3 = (a: Place, b: Place): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
/** The direction from `a` to `b`, of length 1. */
export const along = (a: Place, b: Place): Place => times(minus(b, a), 1 / apart(a, b));
