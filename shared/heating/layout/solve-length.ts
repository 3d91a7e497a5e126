import { cutToLength, pathLength } from './cable-path.js';
import type { Serving } from './fill/field-menu.js';
import type { Layer, Spread } from './layer.js';
import type { Piece } from './path.js';

/**
 * Uses the label's length to the inch. Of all spacings the widest is taken that still takes all of the cable; it opens
 * field by field from the end. What is over is drawn in at half turns, from the end too, and what is still left is taken off the last
 * run. Null when no spacing takes exactly the label's length so.
 */
export function solveLength(layer: Layer): Piece[] | null {
  const { length } = layer.cable;
  const takes = (step: number) => (layer.spread(step, Infinity)?.full ?? 0) >= length;
  if (!takes(0)) return null;
  let [low, high] = [0, layer.steps];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (takes(middle)) low = middle;
    else high = middle;
  }
  for (const step of [low, low + 1, low - 1]) {
    if (step < 0 || step >= layer.steps) continue;
    for (let opened = 0; opened <= layer.chain.fields.length; opened++) {
      const spread = layer.spread(step, opened);
      if (spread && fits(spread, length)) return drawIn(layer, spread, length);
    }
  }
  return null;
}

/**
 * As `solveLength`, but all spacings that take the label's length, the widest first: lengths do not fall quite evenly from
 * one to the next.
 */
export function* solveAnyhow(layer: Layer): Generator<Piece[]> {
  const { length } = layer.cable;
  for (const spread of layer.spreads().reverse())
    if (fits(spread, length)) yield drawIn(layer, spread, length);
}

const fits = (spread: Spread, length: number): boolean => spread.full >= length && spread.least <= length;

/** Takes what is over off the last run as far as it may end anywhere, and draws in half turns from the last field backwards. */
function drawIn(layer: Layer, { servings }: Spread, target: number): Piece[] {
  const by = servings.map(() => 0);
  const slacks = layer.slacks(servings);
  const over = () => pathLength(layer.path(servings, by)) - target;
  const cut = slacks.reduce((sum, slack) => sum + slack.cut, 0);
  for (let i = servings.length - 1; i >= 0; i--) {
    const excess = over() - cut;
    if (excess <= HAIR) break;
    by[i] = depthFor(servings[i]!, excess, slacks[i]!.deepest);
    // Runs that fan out give up a little more than reckoned.
    while (by[i]! > 0 && over() < 0) by[i] = Math.max(0, by[i]! - 0.02);
  }
  return cutToLength(layer.path(servings, by), over());
}

const HAIR = 1e-6;

/** How far half turns must be drawn in to give up so much cable, in, or as far as they may be. */
function depthFor({ turns }: Serving, excess: number, deepest: number): number {
  const order = turns.map(({ most }) => Math.min(most, deepest)).sort((a, b) => a - b);
  let [rest, depth] = [excess / 2, 0];
  for (const [k, most] of order.entries()) {
    const all = order.length - k;
    if ((most - depth) * all >= rest) return depth + rest / all;
    rest -= (most - depth) * all;
    depth = most;
  }
  return depth;
}
