/** Draws numbers from 0 up to, but not including, 1. */
export type Random = () => number;

/** A small seeded generator (mulberry32, public domain), so that equal seeds search alike on every machine. */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A whole number from 0 up to, but not including, `below`. */
export function pick(random: Random, below: number): number {
  return Math.floor(random() * below);
}
