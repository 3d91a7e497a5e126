import { fromMemory, type Source } from '../source.js';

/** Soil as a laboratory or a boring describes it. */
export interface Soil {
  readonly texture: 'fine' | 'coarse';
  /** Dry weight, lb/ft³. */
  readonly dryDensity: number;
  /** Water by weight of the dry soil, %. */
  readonly moisture: number;
}

/** Where the properties come from. */
export const SOIL_SOURCE: Source = fromMemory('Kersten 1949, as used in UFC 3-130-06');

/** Latent heat of the water in the soil, Btu/ft³: 144 Btu to the pound. */
export const latentHeat = ({ dryDensity, moisture }: Soil): number => (144 * dryDensity * moisture) / 100;

/** Heat kept by the soil, mean of frozen and thawed, Btu/ft³·°F. */
export const soilHeat = ({ dryDensity, moisture }: Soil): number =>
  dryDensity * (0.17 + (0.75 * moisture) / 100);

/** Conductivity, mean of frozen and thawed, Btu/h·ft·°F. */
export const soilConductivity = (soil: Soil): number => (frozen(soil) + thawed(soil)) / 2 / 12;

// In Btu·in/h·ft²·°F, as the curves are given.
const frozen = ({ texture, dryDensity: d, moisture: w }: Soil): number =>
  texture === 'fine'
    ? 0.01 * 10 ** (0.022 * d) + 0.085 * 10 ** (0.008 * d) * w
    : 0.076 * 10 ** (0.013 * d) + 0.032 * 10 ** (0.0146 * d) * w;
const thawed = ({ texture, dryDensity: d, moisture: w }: Soil): number =>
  (texture === 'fine' ? 0.9 * Math.log10(w) - 0.2 : 0.7 * Math.log10(w) + 0.4) * 10 ** (0.01 * d);

/** Throws where a soil lies outside what the curves were drawn from, saying what to do. */
export function demandSoil({ dryDensity, moisture }: Soil): void {
  if (!(dryDensity >= 60 && dryDensity <= 150))
    throw new RangeError(`dry soil weighs 60 to 150 lb/ft³, got ${dryDensity}; weigh it again`);
  if (!(moisture >= 3 && moisture <= 40))
    throw new RangeError(
      `soil holds 3 to 40 % of water, got ${moisture}; take the local frost depth instead`,
    );
}
