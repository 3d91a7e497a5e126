/** Draws numbers from 0 up to, but not including, 1. */
export type Random = () => number;

const WORDS = 2 ** 32;

/** A small seeded generator (mulberry32, public domain) of whole numbers of 32 bits. */
export function seededWords(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (t ^ (t >>> 14)) >>> 0;
  };
}

/** The same as shares of 1, so that equal seeds search alike on every machine. */
export function seededRandom(seed: number): Random {
  const next = seededWords(seed);
  return () => next() / WORDS;
}

/** A whole number from 0 up to, but not including, `below`. */
export function pick(random: Random, below: number): number {
  return Math.floor(random() * below);
}
