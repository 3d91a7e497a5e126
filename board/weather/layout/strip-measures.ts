/** Heights within the weather strip over a job, in pixels; the style sheet draws what these lay out. */
export const STRIP = {
  /** The figures of the day, and beside them the bubbles of visits. */
  figures: 17,
  windBottom: 24,
  traceTop: 23,
  traceBottom: 41,
  /** Where the bands of closed weather begin. */
  bandsTop: 43,
  /** One band for all work, or one for each kind of work. */
  band: 9,
  kindBand: 14,
  below: 3,
} as const;

/** Height of the strip: with one band, or with one for each kind of work. */
export function stripHeight(kinds: number, byKind: boolean): number {
  return STRIP.bandsTop + (byKind ? Math.max(1, kinds) * STRIP.kindBand : STRIP.band) + STRIP.below;
}
