import { sortedById } from '../by-id.js';
import { canDo } from '../can-do.js';
import type { Link, Phase, PlanInput } from '../model.js';

interface Waiting {
  readonly i: number;
  readonly phase: Phase;
  readonly ready: number;
}

/**
 * Parallel generation: time goes forward, and at each instant whatever is ready and finds its crew and equipment starts, smallest key first;
 * nothing is kept free for what comes later. Each phase takes as long by the clock as it was last seen to; so the starts make an order for
 * the engine, not a plan.
 *
 * @param keys which goes first, phase by phase in id order
 * @param lengths by the clock, in the same order
 * @returns starts in the same order; phases that wait for each other, or for what nobody has, start at the end of the horizon
 */
export function parallelOrder(input: PlanInput, keys: Float64Array, lengths: Int32Array): Float64Array {
  const phases = sortedById(input.phases);
  const places = new Map(phases.map(({ id }, i) => [id, i]));
  const starts = new Float64Array(phases.length).fill(input.horizon);
  const before: Link[][] = phases.map(() => []);
  const after: number[][] = phases.map(() => []);
  for (const link of input.links) {
    before[places.get(link.to)!]!.push(link);
    after[places.get(link.from)!]!.push(places.get(link.to)!);
  }
  const missing = before.map((links) => links.length);
  const crews = sortedById(input.crews).map((crew) => ({ crew, free: -Infinity }));
  const left = new Map(input.pools.map(({ id, quantity }) => [id, quantity]));
  const returns: { at: number; poolId: string; quantity: number }[] = [];
  let waiting: Waiting[] = [];
  const learn = (i: number): void => {
    const phase = phases[i]!;
    const floors = (phase.gates ?? []).map((gate) =>
      gate.kind === 'notBefore'
        ? gate.at
        : ((gate.kind === 'clearance' ? gate.earliest : gate.kind === 'cure' ? gate.expected : null) ?? 0),
    );
    const bounds = before[i]!.map(({ from, kind, lag }) => {
      const other = places.get(from)!;
      const anchor = starts[other]! + (kind[0] === 'F' ? lengths[other]! : 0) + lag;
      return kind[1] === 'F' ? anchor - lengths[i]! : anchor;
    });
    waiting.push({ i, phase, ready: Math.max(input.now, ...floors, ...bounds) });
    waiting.sort((a, b) => keys[a.i]! - keys[b.i]! || a.i - b.i);
  };
  const crewFor = (phase: Phase, now: number): (typeof crews)[number] | undefined =>
    crews.find(({ crew, free }) => free <= now && canDo(crew, phase));
  const tryStart = ({ i, phase, ready }: Waiting, now: number): boolean => {
    if (ready > now) return false;
    const needsCrew = phase.trade !== undefined || phase.crewId !== undefined;
    const mine = needsCrew ? crewFor(phase, now) : undefined;
    if (needsCrew && !mine) return false;
    const holds = phase.holds ?? [];
    if (holds.some(({ poolId, quantity }) => left.get(poolId)! < quantity)) return false;
    starts[i] = now;
    if (mine) mine.free = now + lengths[i]!;
    for (const { poolId, quantity } of holds) {
      left.set(poolId, left.get(poolId)! - quantity);
      returns.push({ at: now + lengths[i]!, poolId, quantity });
    }
    return true;
  };

  missing.forEach((count, i) => count === 0 && learn(i));
  for (let now: number = input.now; now < input.horizon;) {
    for (let k = returns.length - 1; k >= 0; k--) {
      const { at, poolId, quantity } = returns[k]!;
      if (at > now) continue;
      left.set(poolId, left.get(poolId)! + quantity);
      returns.splice(k, 1);
    }
    const started = waiting.find((one) => tryStart(one, now));
    if (started) {
      waiting = waiting.filter((one) => one !== started);
      for (const next of after[started.i]!) if (--missing[next]! === 0) learn(next);
      continue;
    }
    let next: number = input.horizon;
    const later = (at: number): void => {
      if (at > now && at < next) next = at;
    };
    for (const { ready } of waiting) later(ready);
    for (const { free } of crews) later(free);
    for (const { at } of returns) later(at);
    now = next;
  }
  return starts;
}
