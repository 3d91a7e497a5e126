import { hatchFill } from './hatches.js';

/** A band of the material's hatch along the side of a card; empty and dotted for a wait. */
export function HatchBand({ hatch, wait }: { readonly hatch: string; readonly wait: boolean }) {
  return (
    <svg className={wait ? 'hatch-band hatch-band-wait' : 'hatch-band'} aria-hidden="true">
      <rect width="100%" height="100%" fill={(wait ? null : hatchFill(hatch)) ?? 'none'} />
    </svg>
  );
}
