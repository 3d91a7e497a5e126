/** How a search spends its passes. */
export interface SearchSettings {
  /** Schedules in each population. */
  readonly population: number;
  /** Share of children that keep the busiest stretch of one parent; the others take the middle of one parent and the ends of the other. */
  readonly busyShare: number;
  /** Share of children decoded with a delay of their own; the others strictly by their keys. */
  readonly delayedShare: number;
  /** Share of the first population decoded strictly by its keys. */
  readonly serialShare: number;
  /** Share of children that are disturbed, and share of their keys that is. */
  readonly disturbedShare: number;
  readonly disturbedKeys: number;
  /** Passes without a new best after which a new population is begun. */
  readonly patience: number;
}

/** Where the two ends of the scale were tried: passes per activity. */
const FEW = 40;
const MANY = 150;

/**
 * Settings by how many passes there are for each activity. With few passes a small population that keeps to what is good gets furthest,
 * with many a larger one that is disturbed and begun anew. Found by trial on published instances; see the decision about the search.
 */
export function settingsFor(passes: number, activities: number): SearchSettings {
  const each = passes / Math.max(1, activities);
  const roam = Math.min(1, Math.max(0, Math.log(each / FEW) / Math.log(MANY / FEW)));
  const population = Math.max(6, Math.round(20 * (each / 8.3) ** 0.4));
  return {
    population: Math.min(population, Math.max(2, Math.floor(passes / 6))),
    busyShare: 1 - 0.5 * roam,
    delayedShare: 1 - 0.4 * roam,
    serialShare: 0.5 * roam,
    disturbedShare: 0.8 * roam,
    disturbedKeys: 0.05,
    patience: Math.round(passes * (1 - 0.64 * roam)),
  };
}
