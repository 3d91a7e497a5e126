import type { Point } from '../../entry/geometry/point.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import { pathLength, pathOf } from './cable-path.js';
import type { Chosen } from './choose-ways.js';
import type { FieldChain } from './field.js';
import { FieldMenu, lineOf, type Serving, type Slack } from './fill/field-menu.js';
import type { Piece } from './path.js';
import type { Ringed } from './ringed.js';

/** Every field spaced in one way, with the label lengths that they take together. */
export interface Spread {
  readonly servings: readonly Serving[];
  /** Cable that they take with nothing drawn in, in. */
  readonly full: number;
  /** Cable that they take when all that may be is drawn in or taken off the end, in. */
  readonly least: number;
}

/** Each spacing that is tried is so much wider than the one before. */
const STEP = 1.025;

/** Lays the fields of a chain at given spacings, along ways that were chosen. */
export class Layer {
  private readonly menus: readonly FieldMenu[];
  private readonly between: readonly Point[];
  /** How many spacings there are to try, the closest first. */
  readonly steps: number;

  constructor(
    readonly chain: FieldChain,
    fields: readonly Ringed[],
    { ways, lines, taste }: Chosen,
    readonly cable: LayoutCable,
    /** Widest spacing to try, in. */
    widest: number,
  ) {
    this.menus = ways.map((own, i) => new FieldMenu(fields[i]!.gap, own, cable, taste));
    this.between = lines;
    this.steps = Math.floor(Math.log(widest / closestSpacing(cable)) / Math.log(STEP)) + 1;
  }

  /**
   * The fields at one of the spacings, and from field `opened` on at the next wider one; null when the cable does not get
   * through.
   */
  spread(step: number, opened: number): Spread | null {
    const pitch = (k: number) => closestSpacing(this.cable) * STEP ** k;
    const servings = this.menus.map((menu, i) => menu.at(pitch(i >= opened ? step + 1 : step)));
    if (!servings.every((serving) => serving !== null)) return null;
    const full = pathLength(
      this.path(
        servings,
        servings.map(() => 0),
      ),
    );
    const slacks = () => this.slacks(servings);
    return {
      servings,
      full,
      get least() {
        return slacks().reduce((rest, { drawn, cut }) => rest - drawn - cut, full);
      },
    };
  }

  /** The fields at every spacing, and with one field after the other opened from the end. */
  spreads(): Spread[] {
    const out: Spread[] = [];
    for (let step = 0; step < this.steps; step++) {
      for (let opened = this.chain.fields.length; opened > 0; opened--) {
        const spread = this.spread(step, opened);
        if (spread && spread.servings.some((serving, i) => serving !== out[out.length - 1]?.servings[i]))
          out.push(spread);
      }
    }
    return out.filter(({ servings }) => servings.every(({ across }) => across <= this.cable.greatestSpacing));
  }

  /** What each field can give up. */
  slacks(servings: readonly Serving[]): Slack[] {
    return servings.map((serving, i) => this.menus[i]!.slackOf(serving));
  }

  path(servings: readonly Serving[], drawnIn: readonly number[]): Piece[] {
    return pathOf(
      this.chain,
      servings.map((serving, i) => lineOf(serving, drawnIn[i]!)),
      this.between,
      this.cable,
      Math.max(...servings.map(({ filling }) => filling.gap)),
    );
  }
}
