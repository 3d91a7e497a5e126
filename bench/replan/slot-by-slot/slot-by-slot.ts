import type { Link, Phase, PlanInput } from '../../../shared/schedule/model.js';
import { byId, candidatesOf, needsCrew } from './candidates.js';
import { DaySheet } from './day-sheet.js';
import { refuseUnknown } from './refuse.js';
import { Store } from './store.js';
import { tryCrews, type NoPlace, type Place, type Standing } from './try-slots.js';
import { byUrgency } from './urgency.js';

/** Where slot by slot puts a phase; nulls where it finds no place. */
export interface Dated {
  readonly id: string;
  readonly start: number | null;
  readonly finish: number | null;
  readonly crewId: string | null;
}

/**
 * Dates for every phase, in id order, found by trying every slot in turn: what a straightforward scheduler does, written without anything of
 * the planning engine so that the two can be held against each other. It knows crews, hours, weather, the three kinds of length, the four
 * kinds of link with lags and leads, dated gates, and equipment held until another phase finishes.
 *
 * @throws RangeError for facts, commitments, inspections, greatest lags and circles, which it does not plan
 */
export function slotBySlot(input: PlanInput): Dated[] {
  refuseUnknown(input);
  return new SlotBySlot(input).run();
}

class SlotBySlot implements Standing {
  readonly sheet: DaySheet;
  readonly store: Store;
  readonly busy: ReadonlyMap<string, Uint8Array>;
  readonly linksTo: ReadonlyMap<string, Link[]>;
  private readonly phases: ReadonlyMap<string, Phase>;
  /** In the order of urgency. */
  private readonly order: readonly Phase[];
  private readonly places = new Map<string, Place | null>();
  /** Everything that has been given a place or none, in the order in which that was done. */
  private readonly done: Phase[] = [];
  /** Phases that are looking for a place. */
  private readonly looking = new Set<string>();
  /** Phases whose way to a release is being placed. */
  private readonly lending = new Set<Phase>();

  constructor(readonly input: PlanInput) {
    this.sheet = new DaySheet(input);
    this.store = new Store(input);
    this.busy = new Map(input.crews.map(({ id }) => [id, new Uint8Array(input.horizon)]));
    this.phases = new Map(input.phases.map((phase) => [phase.id, phase]));
    this.linksTo = new Map(input.phases.map(({ id }) => [id, []]));
    for (const link of input.links) this.linksTo.get(link.to)!.push(link);
    this.order = byUrgency(input, this.sheet);
  }

  run(): Dated[] {
    const left = [...this.order];
    for (;;) {
      const next = left.findIndex((phase) => this.places.has(phase.id) || this.isReady(phase));
      if (next < 0) break;
      const [phase] = left.splice(next, 1);
      if (!this.places.has(phase!.id)) this.settle(phase!);
    }
    const none = { start: null, finish: null, crewId: null };
    return [...this.input.phases].sort(byId).map(({ id }) => ({ id, ...(this.places.get(id) ?? none) }));
  }

  placeOf(id: string): Place {
    return this.places.get(id)!;
  }

  private isReady(phase: Phase): boolean {
    if (this.places.has(phase.id)) return false;
    return this.linksTo.get(phase.id)!.every(({ from }) => this.places.has(from));
  }

  /** Gives a phase its place together with the way to the return of what it holds; tries again after a lack of stock. */
  private settle(phase: Phase): void {
    this.looking.add(phase.id);
    for (const releaser of this.releasersOf(phase)) {
      if (!this.wayTo(releaser).has(phase)) this.settleWay(releaser);
    }
    this.looking.delete(phase.id);
    const mark = this.done.length;
    for (let notBefore = -Infinity; ;) {
      const place = this.search(phase, notBefore);
      this.put(phase, place);
      if (!place) return;
      this.lending.add(phase);
      const releasers = this.releasersOf(phase);
      for (const releaser of releasers) this.settleWay(releaser);
      this.lending.delete(phase);
      const lack = releasers.length > 0 ? this.store.lackOf(phase) : undefined;
      const never = releasers.some(({ id }) => this.places.get(id) === null);
      if (!lack && !never) return;
      const since = new Set(this.done.slice(mark).map(({ id }) => id));
      const circular = lack && since.has(this.store.whoHas(lack, phase));
      while (this.done.length > mark) this.takeBack();
      if (never || circular || lack?.to === Infinity) return this.put(phase, null);
      notBefore = Math.max(notBefore, lack!.to);
    }
  }

  private search(phase: Phase, notBefore: number): Place | null {
    if (this.linksTo.get(phase.id)!.some(({ from }) => this.places.get(from) === null)) return null;
    if (needsCrew(phase) && candidatesOf(this.input, phase).length === 0) return null;
    if (this.store.asksTooMuch(phase)) return null;
    this.looking.add(phase.id);
    let found: Place | NoPlace = tryCrews(this, phase, notBefore);
    if ('poolId' in found && found.poolId !== null && this.settleLoans(found.poolId)) {
      found = tryCrews(this, phase, notBefore);
    }
    this.looking.delete(phase.id);
    return 'start' in found ? found : null;
  }

  /** Places the way to the return of what is out of a pool without an end; true when there was any. */
  private settleLoans(poolId: string): boolean {
    let changed = false;
    for (const { phase, releasedBy } of this.store.openLoans(poolId)) {
      if (this.lending.has(phase) || this.places.has(releasedBy)) continue;
      this.lending.add(phase);
      this.settleWay(this.phases.get(releasedBy)!);
      this.lending.delete(phase);
      changed = true;
    }
    return changed;
  }

  private releasersOf(phase: Phase): Phase[] {
    return (phase.holds ?? []).flatMap(({ untilPhaseId }) =>
      untilPhaseId === undefined ? [] : [this.phases.get(untilPhaseId)!],
    );
  }

  /** A phase and all it waits for, as far as they have no place. */
  private wayTo(goal: Phase): Set<Phase> {
    const way = new Set<Phase>();
    const add = (phase: Phase): void => {
      if (way.has(phase) || this.places.has(phase.id)) return;
      way.add(phase);
      for (const { from } of this.linksTo.get(phase.id)!) add(this.phases.get(from)!);
    };
    add(goal);
    return way;
  }

  private settleWay(goal: Phase): void {
    const way = this.wayTo(goal);
    const list = this.order.filter((phase) => way.has(phase));
    const ready = (phase: Phase): boolean => this.isReady(phase) && !this.looking.has(phase.id);
    for (let next = list.find(ready); next; next = list.find(ready)) this.settle(next);
  }

  private put(phase: Phase, place: Place | null): void {
    this.places.set(phase.id, place);
    this.done.push(phase);
    if (!place) return;
    if (place.crewId !== null) this.busy.get(place.crewId)!.fill(1, place.start, place.finish);
    this.store.take(phase, place.start, place.finish, (id) => this.places.get(id)?.finish);
    this.store.release(phase.id, place.finish);
  }

  private takeBack(): void {
    const phase = this.done.pop()!;
    const place = this.places.get(phase.id);
    this.places.delete(phase.id);
    if (!place) return;
    if (place.crewId !== null) this.busy.get(place.crewId)!.fill(0, place.start, place.finish);
    this.store.takeBack(phase);
    this.store.release(phase.id, undefined);
  }
}
