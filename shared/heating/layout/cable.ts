/** What the layout asks of a heating set; lengths in inches. Twin conductor: it ends where it ends and needs no way back. */
export interface LayoutCable {
  /** Heated length of the label; never cut. */
  readonly length: number;
  readonly watts: number;
  readonly leastBend: number;
  /** On centres, from the set's instructions or the trade's rule. */
  readonly leastSpacing: number;
  readonly greatestSpacing: number;
  readonly coldLead: number;
}

/** Closest that runs may lie: no closer than a half turn at the least bend allows. */
export const closestSpacing = ({ leastSpacing, leastBend }: LayoutCable): number =>
  Math.max(leastSpacing, 2 * leastBend);
