import type { CureBranch } from './cure-branch.js';

/** A row of the comparison: one matter, both branches. Null is unknown or out of sight. */
export interface ComparisonRow {
  readonly key:
    | 'placed'
    | 'release'
    | 'blanket-days'
    | 'enclosure-days'
    | 'heater-days'
    | 'heating-hours'
    | 'lowest'
    | 'first-freeze-hours'
    | 'strength-at-freezing';
  readonly label: string;
  /** Instants in ms, temperatures in °F, strengths in psi, else as the label says. */
  readonly protect: number | null;
  readonly wait: number | null;
}

/** Both branches side by side. It compares and does not choose: the office does. */
export function compareBranches(protect: CureBranch, wait: CureBranch): ComparisonRow[] {
  const row = (
    key: ComparisonRow['key'],
    label: string,
    of: (branch: CureBranch) => number | null | undefined,
  ): ComparisonRow => ({ key, label, protect: of(protect) ?? null, wait: of(wait) ?? null });
  return [
    row('placed', 'Placed', ({ placedAt }) => placedAt),
    row('release', 'Required strength expected', ({ prediction }) => prediction.release?.at),
    row('blanket-days', 'Blanket-days', ({ equipment }) => equipment.blanket),
    row('enclosure-days', 'Enclosure-days', ({ equipment }) => equipment.enclosure),
    row('heater-days', 'Heater-days', ({ equipment }) => equipment.heater),
    row('heating-hours', 'Hours of heating', ({ equipment }) => equipment.heatingHours),
    row('lowest', 'Lowest concrete temperature, °F', ({ prediction }) => prediction.lowest.coldest),
    row('first-freeze-hours', 'Hours to 500 psi', ({ prediction }) => prediction.hoursToFirstFreeze),
    row(
      'strength-at-freezing',
      'Strength when it freezes too early, psi',
      ({ prediction }) => prediction.freezes?.strength,
    ),
  ];
}
