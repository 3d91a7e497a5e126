import { erfc } from '../../cure/thermal/erfc.js';

/**
 * λ of the modified Berggren formula from the exact root η of Neumann's equation with one set of properties:
 * e^(−η²)/erf η − α·e^(−η²)/erfc η = √π·η/μ, λ = η·√(2/μ). The common closed form comes out 3 to 16 % too deep.
 * @param mu Share of the soil's own heat: heat capacity × mean surface cold ÷ latent heat.
 * @param alpha Warmth of the ground over the cold of the surface.
 */
export function neumannLambda(mu: number, alpha: number): number {
  if (!(mu > 0 && alpha >= 0))
    throw new RangeError(`μ must be more than 0 and α no less than 0, got ${mu} and ${alpha}`);
  let low = 0;
  let high = 5;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (driving(middle, alpha) > (Math.sqrt(Math.PI) * middle) / mu) low = middle;
    else high = middle;
  }
  return high * Math.sqrt(2 / mu);
}

/** Falls as η grows, so that there is one root. */
function driving(eta: number, alpha: number): number {
  const still = erfc(eta);
  return Math.exp(-eta * eta) * (1 / (1 - still) - alpha / still);
}
