import { feet, inches, type Feet, type Inches } from '../../units/length.js';
import type { Reader } from '../read/reader.js';
import { guessSlip } from './slip.js';

/** Reads inches inside limits, with a guess at what was meant when they are missed. */
export const readInches = (reader: Reader, min: number, max: number, range?: string): Inches =>
  inches(
    reader.number({ min, max, unit: 'in', hint: (v) => guessSlip(v, min, max), ...(range ? { range } : {}) }),
  );

/** Reads feet inside limits, with a guess at what was meant when they are missed. */
export const readFeet = (reader: Reader, min: number, max: number): Feet =>
  feet(reader.number({ min, max, unit: 'ft', hint: (v) => guessSlip(v, min, max) }));
