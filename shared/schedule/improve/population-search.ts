import { busiestStretch, crossBusyStretch, crossTwoPoints, keysOf } from './crossover.js';
import type { Decoder, Direction } from './decoder.js';
import { memberOf, type Member } from './member.js';
import { pick, seededRandom, type Random } from './random.js';
import { settingsFor, type SearchSettings } from './search-settings.js';

/** What bounds a search, and who is told. */
export interface SearchOptions {
  readonly seed: number;
  /** Generation passes to spend; every pass counts, whichever way it goes. */
  readonly passes: number;
  /** Orders to begin with, as keys for forward passes. */
  readonly from?: readonly Float64Array[] | undefined;
  /** Asked before each pass; true ends the search with the best so far. */
  readonly stop?: (() => boolean) | undefined;
  /** Told after each pass. */
  readonly onPass?: ((passes: number, best: number) => void) | undefined;
}

/** The best schedule found. */
export interface SearchResult {
  /** The order as keys: a forward pass, strictly by them, gives it again. */
  readonly keys: Float64Array;
  readonly fitness: number;
  /** Passes spent. */
  readonly passes: number;
}

/**
 * Searches for an order that decodes to a better schedule. Two populations, one pushed to each end (one, where passes only go forward):
 * children of the one are decoded into the other. A population that finds nothing new for long is given up for a new one.
 */
export function populationSearch(decoder: Decoder, options: SearchOptions): SearchResult {
  return new PopulationSearch(decoder, options).run();
}

class PopulationSearch {
  private readonly random: Random;
  private readonly keys: Float64Array;
  private readonly otherKeys: Float64Array;
  private readonly meanDuration: number;
  private scratch = new Float64Array(0);
  private passes = 0;
  private best: Member | undefined;
  private lastBest = 0;

  constructor(
    private readonly decoder: Decoder,
    private readonly options: SearchOptions,
  ) {
    this.random = seededRandom(options.seed);
    this.keys = new Float64Array(decoder.activities);
    this.otherKeys = new Float64Array(decoder.activities);
    this.meanDuration =
      decoder.durations.reduce((sum, duration) => sum + duration, 0) / Math.max(1, decoder.activities);
  }

  run(): SearchResult {
    const { passes } = this.options;
    this.first();
    const settings = settingsFor(passes, this.decoder.activities);
    while (!this.over()) this.evolve(settings);
    const { keys, starts, fitness } = this.forward(this.best!);
    return { keys: keys ?? Float64Array.from(starts), fitness, passes: this.passes };
  }

  /** Something to return however little there is to spend: the given orders, or the one by latest finish. */
  private first(): void {
    const given = this.options.from ?? [];
    for (const keys of given) {
      if (this.best && this.over()) return;
      this.keys.set(keys);
      this.decode(0, Infinity);
    }
    if (given.length === 0) {
      this.byLatestFinish(0, 0);
      this.decode(0, 0);
    }
  }

  private over(): boolean {
    // A best that was built from the end costs one more pass, forward.
    const left = this.options.passes - this.passes - (this.best?.direction === 1 ? 1 : 0);
    return left <= 0 || this.best!.fitness <= this.decoder.bound || this.options.stop?.() === true;
  }

  private decode(direction: Direction, delay: number): Member {
    const starts = new Int32Array(this.decoder.activities);
    const fitness = this.decoder.decode(direction, this.keys, delay, starts);
    const kept = this.decoder.directions === 1 ? this.keys : undefined;
    const member = memberOf(direction, starts, this.decoder.durations, fitness, kept);
    this.passes++;
    // The last pass of all cannot be brought forward any more: built from the end, it is of no use.
    const usable = direction === 0 || this.passes < this.options.passes;
    if (usable && (!this.best || fitness < this.best.fitness)) {
      this.best = member;
      this.lastBest = this.passes;
    }
    this.options.onPass?.(this.passes, this.best!.fitness);
    return member;
  }

  /** A schedule as it is seen from the beginning: one that was built from the end is pushed forward, which never makes it longer. */
  private forward(member: Member): Member {
    if (member.direction === 0) return member;
    keysOf(member, true, this.decoder.durations, this.keys);
    return this.decode(0, Infinity);
  }

  /** Keys by latest finish, disturbed by up to `spread` slots each way. */
  private byLatestFinish(direction: Direction, spread: number): void {
    const tails = this.decoder.tails(direction);
    for (let i = 0; i < this.keys.length; i++) {
      this.keys[i] = this.decoder.durations[i]! - tails[i]! + spread * (2 * this.random() - 1);
    }
  }

  /** One life of the populations. */
  private evolve(settings: SearchSettings): void {
    const { directions } = this.decoder;
    const populations = this.found(settings);
    if (this.over()) return;
    this.lastBest = this.passes;
    for (let source: Direction = 0; ; source = directions === 2 && source === 0 ? 1 : 0) {
      const target: Direction = directions === 2 && source === 0 ? 1 : 0;
      const parents = populations[source];
      const children = populations[target];
      for (let q = 0; q < parents.length; q++) {
        if (this.over() || this.passes - this.lastBest > settings.patience) return;
        const child = this.child(parents, q, target, settings);
        if (child.fitness <= children[q]!.fitness) children[q] = child;
      }
    }
  }

  /** First populations: by latest finish with noise, from both ends, each justified at once; the better half is kept. */
  private found({ population, serialShare }: SearchSettings): [Member[], Member[]] {
    const pairs: [Member, Member][] = [];
    const { directions } = this.decoder;
    const spread = Math.max(0, ...this.decoder.tails(0)) / 4;
    for (let k = 0; k < 2 * population && !this.over(); k++) {
      const direction: Direction = directions === 2 && k % 2 === 1 ? 1 : 0;
      this.byLatestFinish(direction, spread * this.random());
      const raw = this.decode(direction, this.random() < serialShare ? Infinity : 0);
      if (directions === 1) {
        pairs.push([raw, raw]);
        continue;
      }
      if (this.over()) break;
      keysOf(raw, true, this.decoder.durations, this.keys);
      const justified = this.decode(direction === 0 ? 1 : 0, Infinity);
      pairs.push(direction === 0 ? [raw, justified] : [justified, raw]);
    }
    pairs.sort(([a, b], [c, d]) => Math.min(a.fitness, b.fitness) - Math.min(c.fitness, d.fitness));
    const kept = pairs.slice(0, population);
    return [kept.map(([forward]) => forward), kept.map(([, backward]) => backward)];
  }

  /** A child of the parent in one place and a better of two others. */
  private child(
    parents: readonly Member[],
    place: number,
    target: Direction,
    settings: SearchSettings,
  ): Member {
    const { random } = this;
    const one = parents[place]!;
    const x = parents[pick(random, parents.length)]!;
    const y = parents[pick(random, parents.length)]!;
    let two = x.fitness <= y.fitness ? x : y;
    if (two === one && parents.length > 1) {
      two = parents[(place + 1 + pick(random, parents.length - 1)) % parents.length]!;
    }
    const swap = random() < 0.5;
    const keeper = swap ? two : one;
    const giver = swap ? one : two;
    this.cross(keeper, giver, one.direction !== target || this.decoder.directions === 2, settings);
    if (random() < settings.disturbedShare) this.disturb(keeper.end, settings);
    const delayed = random() < settings.delayedShare;
    return this.decode(target, delayed ? this.delay() : Infinity);
  }

  private cross(keeper: Member, giver: Member, mirrored: boolean, settings: SearchSettings): void {
    const { keys, otherKeys, random } = this;
    const { durations, loads } = this.decoder;
    keysOf(keeper, mirrored, durations, keys);
    keysOf(giver, mirrored, durations, otherKeys);
    if (random() >= settings.busyShare) {
      crossTwoPoints(keys, otherKeys, keeper.end, random);
      return;
    }
    if (this.scratch.length <= keeper.end) this.scratch = new Float64Array(keeper.end + 1);
    const length = Math.max(1, Math.floor(keeper.end * (0.25 + 0.5 * random())));
    const window = busiestStretch(keeper, length, durations, loads, this.scratch);
    crossBusyStretch(keys, otherKeys, keeper, window, durations, mirrored);
  }

  private disturb(end: number, { disturbedKeys }: SearchSettings): void {
    for (let i = 0; i < this.keys.length; i++) {
      if (this.random() < disturbedKeys) this.keys[i]! += (this.random() - 0.5) * end;
    }
  }

  /** Short delays more often than long ones. */
  private delay(): number {
    return Math.round(3 * this.random() * this.random() * this.meanDuration);
  }
}
