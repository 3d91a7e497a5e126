import type { Celsius } from '../../units/temperature.js';
import type { HydrationHeat } from '../hydration/hydration-heat.js';
import type { ThermalMaterial } from './material.js';

/** One layer of a section. */
export interface SectionLayer {
  /** Metres. */
  readonly thickness: number;
  readonly material: ThermalMaterial;
  /** Into how many cells of equal thickness it is cut. */
  readonly cells: number;
  /** Temperature it begins with. */
  readonly start: Celsius;
  /** The heat it sets free while it hardens; null when it is hard already. */
  readonly heat: HydrationHeat | null;
}

/** A cut through what was placed and what lies under it, from the top down. */
export interface Section {
  readonly layers: readonly SectionLayer[];
  /** Which of the layers was placed. */
  readonly placed: number;
  /** What lies under the last layer: no heat passes, air as above, or ground that keeps its temperature. */
  readonly below: 'insulated' | 'air' | 'ground';
}

/** What a face of the section meets in a step. */
export interface FaceCondition {
  /** Temperature beyond the face, °C. */
  readonly temperature: number;
  /** Resistance between the face and that temperature, film and blankets together, m²·K/W. */
  readonly resistance: number;
}
