import { fromMemory, type Source } from '../../entry/source.js';

/** How a material conducts and keeps heat. */
export interface ThermalMaterial {
  readonly name: string;
  /** W/(m·K). */
  readonly conductivity: number;
  /** kg/m³. */
  readonly density: number;
  /** J/(kg·K). */
  readonly specificHeat: number;
}

/** Where the figures of the materials come from. */
export const MATERIAL_SOURCE: Source = fromMemory('handbook figures for ordinary building materials');

/** Young concrete of ordinary weight. */
export const CONCRETE: ThermalMaterial = {
  name: 'concrete',
  conductivity: 1.9,
  density: 2350,
  specificHeat: 1000,
};
/** Mortar of a bed or of joints. */
export const MORTAR: ThermalMaterial = {
  name: 'mortar',
  conductivity: 1.2,
  density: 2000,
  specificHeat: 1000,
};
/** Block laid and filled. */
export const FILLED_BLOCK: ThermalMaterial = {
  name: 'filled block',
  conductivity: 1.4,
  density: 2100,
  specificHeat: 950,
};
/** Stone of a tread or a walk. */
export const STONE: ThermalMaterial = { name: 'stone', conductivity: 2.5, density: 2600, specificHeat: 850 };
/** Moist ground. */
export const SOIL: ThermalMaterial = { name: 'ground', conductivity: 1.5, density: 1800, specificHeat: 1200 };

/** Heat capacity of a cubic metre, J/(m³·K). */
export const heatCapacity = ({ density, specificHeat }: ThermalMaterial): number => density * specificHeat;
