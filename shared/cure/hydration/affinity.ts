import { fromMemory, type Source } from '../../entry/source.js';
import { toKelvin, type Celsius } from '../../units/temperature.js';

/** Affinity form of hydration: dα/dt = B₁·(B₂/α∞ + α)·(α∞ − α)·exp(−η·α/α∞), times the Arrhenius factor. */
export interface Affinity {
  /** B₁, 1/s. */
  readonly b1: number;
  readonly b2: number;
  readonly eta: number;
  /** Degree of hydration it tends to. */
  readonly ultimate: number;
  /** Activation energy, J/mol; 0 for a form that knows no temperature. */
  readonly activation: number;
  readonly reference: Celsius;
}

/** Where the form comes from. */
export const AFFINITY_SOURCE: Source = fromMemory('Cervera, Oliver and Prato 1999');

const GAS = 8.314;

/** Speed of hydration at a degree and a temperature, 1/s. */
export function affinityRate(form: Affinity, degree: number, temperature: Celsius): number {
  const { b1, b2, eta, ultimate, activation, reference } = form;
  const chemical = b1 * (b2 / ultimate + degree) * (ultimate - degree) * Math.exp((-eta * degree) / ultimate);
  return chemical * Math.exp((activation / GAS) * (1 / toKelvin(reference) - 1 / toKelvin(temperature)));
}

/**
 * Degree of hydration after a step of `seconds` by backward Euler: the root of x − α − dt·rate(x) between the present
 * degree and the ultimate one. `temperatureAt` gives the temperature that goes with a degree, so that the heat set free
 * in the step counts in it.
 */
export function affinityStep(
  form: Affinity,
  degree: number,
  seconds: number,
  temperatureAt: (degree: number) => Celsius,
): number {
  const excess = (x: number) => x - degree - seconds * affinityRate(form, x, temperatureAt(x));
  let low = degree;
  let high = form.ultimate;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (excess(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
