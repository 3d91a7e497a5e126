import type { Finding } from '../../entry/rules/finding.js';
import { published } from '../../entry/source.js';
import { degreesBetween, type Fahrenheit } from '../../units/temperature.js';

/** Largest difference between surface and air at which protection may come off, °F. */
const LARGEST = 20;

/** Protection stays on until the surface is within 20 °F of the air, whatever day it is: cold air would crack it. */
export function protectionRemoval(surface: Fahrenheit, air: Fahrenheit): Finding {
  const difference = degreesBetween(air, surface);
  const ok = difference <= LARGEST;
  return {
    rule: 'protection-removal',
    ok,
    measured: `surface ${round(difference)} °F over the air`,
    limit: `at most ${LARGEST} °F`,
    source: published('Concrete Construction on ACI 306.1-90 §3.2.3'),
    text: ok
      ? 'Surface near the air: protection may come off as far as temperature goes'
      : 'Keep it on: turn the heat down slowly and loosen the blankets until the surface is within 20 °F of the air',
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;
