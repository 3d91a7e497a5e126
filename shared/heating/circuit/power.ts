import {
  amperes,
  ohms,
  watts,
  type Amperes,
  type Ohms,
  type Volts,
  type Watts,
} from '../../units/electrical.js';

/** Resistance of a load: V²/R = P turned round. */
export const loadResistance = (power: Watts, voltage: Volts): Ohms => ohms(voltage ** 2 / power);
/** Power of a resistance at a voltage: P = V²/R. */
export const powerAt = (resistance: Ohms, voltage: Volts): Watts => watts(voltage ** 2 / resistance);
/** Current of a load. */
export const loadCurrent = (power: Watts, voltage: Volts): Amperes => amperes(power / voltage);
/** Power of a set on another voltage than its own: (V₂/V₁)² of it. A 240 V set on 208 V gives three quarters. */
export const offVoltagePower = (power: Watts, rated: Volts, actual: Volts): Watts =>
  watts(power * (actual / rated) ** 2);
