import type { Hours } from '../../units/time.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { HAIR } from './spread.js';

const OUTDOOR_HOURS = 4;

/** Assigned protection factor that a wet hand-held saw asks of a respirator: 10 indoors or over 4 h a day, else none. */
export const respiratorFactor = (time: Hours, indoors: boolean): number =>
  indoors || time > OUTDOOR_HOURS + HAIR ? 10 : 0;

/** Whoever cuts block or stone with a wet hand-held saw wears the respirator that place and time ask for. */
export function silicaRespirator(time: Hours, indoors: boolean, worn: number): Finding {
  const asked = respiratorFactor(time, indoors);
  const ok = worn >= asked;
  return {
    rule: 'silica-respirator',
    ok,
    measured: worn === 0 ? 'no respirator' : `respirator with a factor of ${worn}`,
    limit: asked === 0 ? 'none asked' : `factor of at least ${asked}`,
    source: published('29 CFR 1926.1153, Table 1'),
    text: ok
      ? 'Protected as the table asks'
      : 'Wear a respirator with a factor of 10, or cut outdoors and less',
    caution: 'Always wet, with the water the saw is made for; never dry without capture.',
  };
}
