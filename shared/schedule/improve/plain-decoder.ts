import type { Decoder, Direction } from './decoder.js';
import { compileNetwork, type Network, type PlainProject } from './network.js';
import { ResourceProfile } from './resource-profile.js';

/**
 * Passes over a plain project: time always open, resources by quantity, the latest finish to be early. Keys that name the delay run from
 * non-delay to serial generation (parameterised active schedules: Gonçalves, Mendes and Resende 2008). Nothing is allocated in a pass.
 */
export class PlainDecoder implements Decoder {
  readonly activities: number;
  readonly directions = 2;
  readonly bound: number;
  readonly durations: Int32Array;
  readonly loads: Float64Array;
  private readonly network: Network;
  private readonly profile: ResourceProfile;
  /** Activities whose predecessors are all placed. */
  private readonly eligible: Int32Array;
  private readonly waiting: Int32Array;
  /** When predecessors let each start. */
  private readonly ready: Int32Array;
  /** Earliest start of each eligible one by what is taken so far. */
  private readonly earliest: Int32Array;

  /** @throws RangeError for a circle or a demand above its capacity */
  constructor({ capacities, demands, ...rest }: PlainProject) {
    this.network = compileNetwork({ capacities, demands, ...rest });
    const { activities, durations, longest, critical } = this.network;
    this.activities = activities;
    this.durations = durations;
    this.bound = critical;
    this.loads = Float64Array.from(demands, (row) =>
      row.reduce((sum, taken, r) => sum + (taken === 0 ? 0 : taken / capacities[r]!), 0),
    );
    this.profile = new ResourceProfile(capacities, demands, longest);
    this.eligible = new Int32Array(activities);
    this.waiting = new Int32Array(activities);
    this.ready = new Int32Array(activities);
    this.earliest = new Int32Array(activities);
  }

  tails(direction: Direction): Int32Array {
    return this.network.views[direction].tails;
  }

  decode(direction: Direction, keys: Float64Array, delay: number, starts: Int32Array): number {
    this.profile.clear();
    this.waiting.set(this.network.views[direction].before);
    this.ready.fill(0);
    return delay === Infinity
      ? this.serial(direction, keys, starts)
      : this.delayed(direction, keys, delay, starts);
  }

  /** Puts all activities without predecessors on the list; returns how many. */
  private open(): number {
    let count = 0;
    for (let i = 0; i < this.activities; i++) if (this.waiting[i] === 0) this.eligible[count++] = i;
    return count;
  }

  private serial(direction: Direction, keys: Float64Array, starts: Int32Array): number {
    const { eligible, waiting, ready, durations, profile } = this;
    const { from, next } = this.network.views[direction];
    let count = this.open();
    let end = 0;
    while (count > 0) {
      let best = 0;
      for (let q = 1; q < count; q++) if (keys[eligible[q]!]! < keys[eligible[best]!]!) best = q;
      const i = eligible[best]!;
      eligible[best] = eligible[--count]!;
      const duration = durations[i]!;
      const start = profile.earliest(i, ready[i]!, duration);
      profile.take(i, start, duration);
      starts[i] = start;
      const finish = start + duration;
      if (finish > end) end = finish;
      for (let q = from[i]!; q < from[i + 1]!; q++) {
        const j = next[q]!;
        if (ready[j]! < finish) ready[j] = finish;
        if (--waiting[j]! === 0) eligible[count++] = j;
      }
    }
    return end;
  }

  private delayed(direction: Direction, keys: Float64Array, delay: number, starts: Int32Array): number {
    const { eligible, waiting, ready, earliest, durations, profile } = this;
    const { from, next } = this.network.views[direction];
    let count = this.open();
    for (let q = 0; q < count; q++) earliest[eligible[q]!] = 0;
    let end = 0;
    while (count > 0) {
      let first = earliest[eligible[0]!]!;
      for (let q = 1; q < count; q++) if (earliest[eligible[q]!]! < first) first = earliest[eligible[q]!]!;
      let best = -1;
      for (let q = 0; q < count; q++) {
        if (earliest[eligible[q]!]! > first + delay) continue;
        if (best < 0 || keys[eligible[q]!]! < keys[eligible[best]!]!) best = q;
      }
      const i = eligible[best]!;
      eligible[best] = eligible[--count]!;
      const duration = durations[i]!;
      const start = earliest[i]!;
      const finish = start + duration;
      profile.take(i, start, duration);
      starts[i] = start;
      if (finish > end) end = finish;
      for (let q = 0; q < count; q++) {
        const j = eligible[q]!;
        const at = earliest[j]!;
        if (at < finish && at + durations[j]! > start) earliest[j] = profile.earliest(j, at, durations[j]!);
      }
      for (let q = from[i]!; q < from[i + 1]!; q++) {
        const j = next[q]!;
        if (ready[j]! < finish) ready[j] = finish;
        if (--waiting[j]! > 0) continue;
        eligible[count++] = j;
        earliest[j] = profile.earliest(j, ready[j]!, durations[j]!);
      }
    }
    return end;
  }
}
