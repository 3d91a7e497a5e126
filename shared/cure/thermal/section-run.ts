import { degreeOfHydration } from '../hydration/hydration.js';
import { heatPerVolume } from '../hydration/hydration-heat.js';
import { celsius } from '../../units/temperature.js';
import { cutIntoCells, type SectionCells } from './section-cells.js';
import type { FaceCondition, Section } from './section.js';
import { solveTridiagonal } from './tridiagonal.js';

/** Where the heat of a run went, J/m². */
export interface EnergyBalance {
  /** Set free by hydration. */
  readonly hydration: number;
  /** Come in through the top; negative when it was lost there. */
  readonly throughTop: number;
  readonly throughBottom: number;
  /** Added or taken away where a measured temperature was taken over. */
  readonly takenOver: number;
  /** By how much the section now holds more than at the beginning. */
  readonly stored: number;
  /** What is missing, as a share of the heat that moved; at most 0.001. */
  readonly error: number;
}

/**
 * Transient conduction through a section by backward Euler on finite volumes: stable at any step. Hydration runs by the
 * equivalent age of each cell, at the speed of the temperature in the middle of the step as far as it is known.
 */
export class SectionRun {
  /** Temperature of each cell from the top down, °C. */
  readonly temperatures: Float64Array;
  /** Degree of hydration of each cell. */
  readonly degrees: Float64Array;
  private readonly cells: SectionCells;
  private readonly ages: Float64Array;
  private readonly lower: Float64Array;
  private readonly diagonal: Float64Array;
  private readonly upper: Float64Array;
  private readonly right: Float64Array;
  private readonly scratch: Float64Array;
  private readonly first: Float64Array;
  private readonly previous: Float64Array;
  private hydrationHeat = 0;
  private topHeat = 0;
  private bottomHeat = 0;
  private takenOver = 0;
  private moved = 0;
  private topFace: number;

  constructor(private readonly section: Section) {
    this.cells = cutIntoCells(section);
    const n = this.cells.count;
    const array = () => new Float64Array(n);
    this.temperatures = Float64Array.from(this.cells.start);
    this.first = Float64Array.from(this.cells.start);
    this.previous = Float64Array.from(this.cells.start);
    this.degrees = array();
    this.ages = array();
    this.lower = array();
    this.diagonal = array();
    this.upper = array();
    this.right = array();
    this.scratch = array();
    this.topFace = this.temperatures[0]!;
  }

  /** Goes on by `seconds` between the two faces; of an insulated face the condition is not looked at. */
  step(seconds: number, top: FaceCondition, bottom: FaceCondition): void {
    const { count, capacity, between, halfTop, halfBottom } = this.cells;
    const { temperatures, lower, diagonal, upper, right } = this;
    const topConductance = 1 / (top.resistance + halfTop);
    const bottomConductance = this.section.below === 'insulated' ? 0 : 1 / (bottom.resistance + halfBottom);
    const added = this.hydrate(seconds);
    for (let i = 0; i < count; i++) {
      const storing = capacity[i]! / seconds;
      const above = i === 0 ? topConductance : between[i - 1]!;
      const under = i === count - 1 ? bottomConductance : between[i]!;
      lower[i] = i === 0 ? 0 : -above;
      upper[i] = i === count - 1 ? 0 : -under;
      diagonal[i] = storing + above + under;
      right[i] = storing * temperatures[i]! + added[i]! / seconds;
    }
    right[0]! += topConductance * top.temperature;
    right[count - 1]! += bottomConductance * bottom.temperature;
    this.previous.set(temperatures);
    solveTridiagonal(lower, diagonal, upper, right, temperatures);
    const throughTop = topConductance * (top.temperature - temperatures[0]!) * seconds;
    const throughBottom = bottomConductance * (bottom.temperature - temperatures[count - 1]!) * seconds;
    this.topFace =
      temperatures[0]! + (top.temperature - temperatures[0]!) * this.cells.halfTop * topConductance;
    this.topHeat += throughTop;
    this.bottomHeat += throughBottom;
    this.moved += Math.abs(throughTop) + Math.abs(throughBottom);
  }

  /**
   * Moves the placed layer's temperatures all by the same, so that what is counted becomes what was measured: the model
   * goes on from there.
   */
  takeOver(measured: number): void {
    const { from, to } = this.cells.placed;
    const shift = measured - this.coldest;
    this.topFace += shift;
    for (let i = from; i < to; i++) {
      this.temperatures[i]! += shift;
      this.previous[i]! += shift;
      this.takenOver += shift * this.cells.capacity[i]!;
      this.moved += Math.abs(shift) * this.cells.capacity[i]!;
    }
  }

  /** Coldest of the placed layer, its upper face included, °C. */
  get coldest(): number {
    const { from, to } = this.cells.placed;
    let lowest = from === 0 ? this.topFace : Infinity;
    for (let i = from; i < to; i++) lowest = Math.min(lowest, this.temperatures[i]!);
    return lowest;
  }

  /** The upper face of the section, °C. */
  get surface(): number {
    return this.topFace;
  }

  /** Middle of the placed layer, °C. */
  get centre(): number {
    const { from, to } = this.cells.placed;
    const middle = (from + to - 1) / 2;
    return (this.temperatures[Math.floor(middle)]! + this.temperatures[Math.ceil(middle)]!) / 2;
  }

  /** Where the heat went since the beginning. */
  balance(): EnergyBalance {
    const { capacity, count } = this.cells;
    let stored = 0;
    for (let i = 0; i < count; i++) stored += capacity[i]! * (this.temperatures[i]! - this.first[i]!);
    const { hydrationHeat: hydration, topHeat: throughTop, bottomHeat: throughBottom, takenOver } = this;
    const missing = Math.abs(stored - hydration - throughTop - throughBottom - takenOver);
    const error = missing / Math.max(1, hydration + this.moved);
    return { hydration, throughTop, throughBottom, takenOver, stored, error };
  }

  /** Heat each cell sets free in the step, J/m²; the temperature goes on for half a step as it went in the last one. */
  private hydrate(seconds: number): Float64Array {
    const { heats, capacity, volume, count } = this.cells;
    const { scratch, ages, degrees, temperatures, previous } = this;
    for (let i = 0; i < count; i++) {
      const heat = heats[i];
      if (!heat || capacity[i] === 0) {
        scratch[i] = 0;
        continue;
      }
      const now = temperatures[i]!;
      const ahead = now + Math.max(-2, Math.min(2, now - previous[i]!)) / 2;
      ages[i]! += ahead < 0 ? 0 : (heat.rate(celsius(ahead)) * seconds) / 3600;
      const degree = degreeOfHydration(heat.hydration, ages[i]!);
      scratch[i] = (degree - degrees[i]!) * heatPerVolume(heat) * volume[i]!;
      degrees[i] = degree;
      this.hydrationHeat += scratch[i]!;
    }
    return scratch;
  }
}
