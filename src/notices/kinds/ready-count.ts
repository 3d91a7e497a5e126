import type { HookupFacts } from './hookup-facts.js';

/** How often the hookup had become ready when the happening was written. */
export function readyCountOf(ids: Readonly<Record<string, unknown>>): number {
  return typeof ids['readyCount'] === 'number' ? ids['readyCount'] : 0;
}

/** Whether the hookup is still in the readiness that was announced: not withdrawn, not ready anew, not done. */
export function stillReady(hookup: Pick<HookupFacts, 'state' | 'readyCount'>, readyCount: number): boolean {
  return (hookup.state === 'ready' || hookup.state === 'booked') && hookup.readyCount === readyCount;
}

/** Source keys of the notices of one readiness. */
export const readyKey = (hookupId: string, readyCount: number): string =>
  `hookup-ready-${hookupId}-${readyCount}`;
export const withdrawnKey = (hookupId: string, readyCount: number): string =>
  `hookup-withdrawn-${hookupId}-${readyCount}`;

/** The count at the end of a source key. */
export function countIn(sourceKey: string): number {
  return Number(sourceKey.slice(sourceKey.lastIndexOf('-') + 1));
}
