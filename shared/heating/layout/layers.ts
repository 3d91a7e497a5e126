import type { Point } from '../../entry/geometry/point.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import { chooseWays } from './choose-ways.js';
import type { FieldChain } from './field.js';
import type { Taste } from './fill/fill-field.js';
import { Layer } from './layer.js';
import { ringed, type Ringed } from './ringed.js';

/** A corner in place of so many bare nodes when a layout should be neat, and when it should take all the cable it can. */
const NEAT = 0.6;
const FULL = 0.05;
/** Up to so many times the closest spacing all the cable is taken that can be. */
const FULL_UP_TO = 1.2;

/** The ways of laying a chain of fields from which a layout is chosen. */
export class Layers {
  private readonly fields: readonly Ringed[];

  constructor(
    private readonly chain: FieldChain,
    private readonly penetration: Point,
    private readonly cable: LayoutCable,
  ) {
    this.fields = chain.fields.map((field) => ringed(field, cable));
  }

  /** Ways that are neat at a spacing. */
  neat(spacing: number): Layer {
    return this.at(spacing, NEAT, this.cable.greatestSpacing);
  }

  /** Ways that leave little bare at a spacing, with however many corners. */
  full(spacing: number): Layer {
    return this.at(spacing, FULL, this.cable.greatestSpacing);
  }

  /** Ways that do not depend on the label's length: what takes most cable, and what takes little. */
  standing(): Layer[] {
    const closest = closestSpacing(this.cable);
    return [this.at(closest, FULL, FULL_UP_TO * closest), this.neat(this.roomy)];
  }

  private get roomy(): number {
    return this.cable.greatestSpacing / 2 - 0.5;
  }

  private at(spacing: number, corner: number, widest: number): Layer {
    const { chain, fields, cable } = this;
    const pitch = Math.min(cable.greatestSpacing, Math.max(closestSpacing(cable), spacing));
    const taste: Taste = { corner, roomy: this.roomy, widest: cable.greatestSpacing };
    return new Layer(
      chain,
      fields,
      chooseWays(chain, fields, this.penetration, cable, pitch, taste),
      cable,
      widest,
    );
  }
}
