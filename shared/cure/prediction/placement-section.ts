import { COMMON_PRACTICE, type Source } from '../../entry/source.js';
import type { Inches } from '../../units/length.js';
import { fahrenheit, toCelsius, type Celsius, type Fahrenheit } from '../../units/temperature.js';
import { ACCELERATOR_SPEED } from '../accelerator.js';
import { ordinaryHeat } from '../hydration/hydration-heat.js';
import type { Mixture } from '../mixture.js';
import type { Exposure } from '../thermal/edge-factor.js';
import { CONCRETE, FILLED_BLOCK, MORTAR, SOIL, STONE, type ThermalMaterial } from '../thermal/material.js';
import type { Section, SectionLayer } from '../thermal/section.js';

/**
 * How a placement lies: on the ground (a footing, a slab); free on both faces (a wall, filled block); or as a bed, thin,
 * over masonry that is hard already.
 */
export type SectionKind = 'on-ground' | 'free' | 'bed';

/** A placement as the thermal model sees it. */
export interface PlacementSection {
  readonly kind: SectionKind;
  /** Of what was placed. */
  readonly thickness: Inches;
  /** Stone over a bed; none when left out. */
  readonly stone?: Inches | null;
  /** Whether it is filled block, not concrete. */
  readonly block?: boolean;
  /** Ground a metre down, masonry under a bed; 40 °F when left out. */
  readonly ground?: Fahrenheit | null;
  /** Where its coldest point is; a corner when left out. */
  readonly coldest?: Exposure;
}

/** Ground that is reckoned with where nobody has measured it. */
export const GROUND: { readonly temperature: Fahrenheit; readonly source: Source } = {
  temperature: fahrenheit(40),
  source: COMMON_PRACTICE,
};

const METRES_PER_INCH = 0.0254;
const KG_PER_M3 = 0.593276;
/** lb/yd³ of cement where the mixture does not say: sparing, so that little heat is reckoned with. */
const CEMENT_LB = 500;

/** Layers of a placement for the thermal model, from the top down. */
export function sectionOf(
  { kind, thickness, stone, block = false, ground }: PlacementSection,
  mixture: Mixture,
  placed: Fahrenheit,
  cells = 12,
): Section {
  const under = toCelsius(ground ?? GROUND.temperature);
  const start = toCelsius(placed);
  const material = kind === 'bed' ? MORTAR : block ? FILLED_BLOCK : CONCRETE;
  const speed = mixture.accelerated === true ? ACCELERATOR_SPEED : 1;
  const heat = ordinaryHeat((mixture.cementLbPerYd3 ?? CEMENT_LB) * KG_PER_M3, speed);
  const hard = (of: ThermalMaterial, metres: number, into: number, at: Celsius): SectionLayer => ({
    thickness: metres,
    material: of,
    cells: into,
    start: at,
    heat: null,
  });
  const over = stone ? [hard(STONE, stone * METRES_PER_INCH, 2, under)] : [];
  const fresh: SectionLayer = {
    thickness: thickness * METRES_PER_INCH,
    material,
    cells: kind === 'bed' ? Math.max(3, Math.ceil(cells / 3)) : cells,
    start,
    heat,
  };
  const masonry = kind === 'bed' ? [hard(FILLED_BLOCK, 0.2, 4, under)] : [];
  const soil =
    kind === 'free' ? [] : [hard(SOIL, 0.1, 2, under), hard(SOIL, 0.3, 3, under), hard(SOIL, 0.6, 3, under)];
  return {
    layers: [...over, fresh, ...masonry, ...soil],
    placed: over.length,
    below: kind === 'free' ? 'air' : 'ground',
  };
}
