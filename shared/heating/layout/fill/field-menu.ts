import type { Point } from '../../../entry/geometry/point.js';
import { closestSpacing, type LayoutCable } from '../cable.js';
import { cutToLength, pathLength } from '../cable-path.js';
import type { Ringed } from '../ringed.js';
import type { FieldWay } from './field-way.js';
import { fillField, linesAt, type Filling, type Taste } from './fill-field.js';
import { piecesOf } from './pieces-of.js';
import { drawnIn, halfTurns, type HalfTurn } from './half-turns.js';

/** One way of spacing the cable in a field. */
export interface Serving {
  readonly way: FieldWay;
  readonly filling: Filling;
  /** Half turns that may be drawn in; the one before the end of the cable is left, so that its last run may end anywhere. */
  readonly turns: readonly HalfTurn[];
  /** Cable that it takes when nothing is drawn in, in; bends between fields are not in it. */
  readonly length: number;
  /** The widest gap that it leaves, in. */
  readonly across: number;
}

/** How much of a serving can be given up before a gap grows too wide. */
export interface Slack {
  /** How far every half turn may be drawn in, in. */
  readonly deepest: number;
  /** Cable that this gives up, in. */
  readonly drawn: number;
  /** Cable that may be taken off its end too, where the cable ends in it, in. */
  readonly cut: number;
}

/** Kept of the greatest spacing while a layout is sought, for what the grid misses, in. */
export const SPARE = 0.3;
/** Each trial of a tighter pitch, as a factor. */
const TIGHTER = 0.95;

/** All spacings of a field along one way, laid when they are asked for and remembered. */
export class FieldMenu {
  private readonly known = new Map<number, Serving | null>();
  private readonly byLines = new Map<string, Serving | null>();
  private readonly slacks = new Map<Serving, Slack>();
  private readonly closest: number;

  constructor(
    private readonly gap: Ringed['gap'],
    private readonly ways: readonly FieldWay[],
    private readonly cable: LayoutCable,
    private readonly taste: Taste,
  ) {
    this.closest = closestSpacing(cable);
  }

  /**
   * The field at a pitch, or at the next tighter one that leaves no gap too wide, or else the next wider one; when none does, the one
   * with the narrowest.
   * Null when its cable cannot get through.
   */
  at(pitch: number): Serving | null {
    const known = this.known.get(pitch);
    if (known !== undefined) return known;
    let serving: Serving | null = null;
    for (const trial of this.trials(pitch)) {
      const laid = this.laid(trial);
      if (laid && (!serving || laid.across < serving.across)) serving = laid;
      if (serving && serving.across <= this.widest) break;
    }
    this.known.set(pitch, serving);
    return serving;
  }

  /** A pitch, then ever tighter ones, then ever wider ones. */
  private *trials(pitch: number): Generator<number> {
    yield pitch;
    for (let p = pitch; p > this.closest;) yield (p = Math.max(this.closest, p * TIGHTER));
    for (let p = pitch; p < this.cable.greatestSpacing;) yield (p = p / TIGHTER);
  }

  /** What a serving can give up. */
  slackOf(serving: Serving): Slack {
    const known = this.slacks.get(serving);
    if (known) return known;
    const slack = this.measuredSlack(serving);
    this.slacks.set(serving, slack);
    return slack;
  }

  private get widest(): number {
    return this.cable.greatestSpacing - SPARE;
  }

  private laid(pitch: number): Serving | null {
    const key = this.ways.map((way) => linesAt(way, pitch, this.taste).join(' ')).join(' ');
    let serving = this.byLines.get(key);
    if (serving === undefined) this.byLines.set(key, (serving = this.filled(pitch)));
    return serving;
  }

  private filled(pitch: number): Serving | null {
    let best: { way: FieldWay; filling: Filling } | null = null;
    for (const way of this.ways) {
      const filling = fillField(way, pitch, this.taste);
      if (filling && (!best || filling.worth < best.filling.worth)) best = { way, filling };
      if (best?.filling.bare === 0) break;
    }
    if (!best) return null;
    const { way, filling } = best;
    const pieces = piecesOf(way, filling.line, filling.gap);
    return {
      way,
      filling,
      turns: halfTurns(filling.line, filling.gap).slice(0, way.to.goesOn ? undefined : -1),
      length: pathLength(pieces),
      across: this.gap(pieces),
    };
  }

  private measuredSlack({ way, filling, turns, length, across }: Serving): Slack {
    const { widest } = this;
    if (across > widest) return { deepest: 0, drawn: 0, cut: 0 };
    const side = filling.gap / 2;
    const pieces = (by: number) => piecesOf(way, drawnIn(filling.line, turns, by), filling.gap);
    const whole = pieces(0);
    const last = whole[whole.length - 1];
    const run = last?.kind === 'straight' && !way.to.goesOn ? pathLength([last]) : 0;
    // By how far a half turn may stay away from its end when the next ones do so too.
    const most = widest / 2 > side ? Math.sqrt((widest / 2) ** 2 - side ** 2) - side : 0;
    const depths = [most + 1, most, most * 0.75, most / 2, most / 4].filter((by) => by > LEAST);
    let best: Slack = { deepest: 0, drawn: 0, cut: 0 };
    // What is cut off the end and what is drawn in beside it share one gap: the more of one, the less of the other.
    for (const cut of run > 0 ? [run, run / 2, 0] : [0]) {
      if (cut > 0 && this.gap(cutToLength(whole, cut)) > widest) continue;
      const deepest = depths.find((by) => this.gap(cutToLength(pieces(by), cut)) <= widest) ?? 0;
      const drawn = length - pathLength(pieces(deepest));
      if (drawn + cut > best.drawn + best.cut) best = { deepest, drawn, cut };
      if (deepest === depths[0]) break;
    }
    return best;
  }
}

/** Less than this is not worth giving up, in. */
const LEAST = 0.2;

/** The line of a field with its half turns drawn in. */
export const lineOf = ({ filling, turns }: Serving, by: number): Point[] => drawnIn(filling.line, turns, by);
