import { inches, type Inches } from './length.js';
import { quantity, type Quantity } from './quantity.js';

/** Wind speed in miles per hour. */
export type MilesPerHour = Quantity<'mph'>;
/** A chance as a percentage from 0 to 100. */
export type Percent = Quantity<'%'>;

/** mph from a bare number. */
export const milesPerHour = (value: number): MilesPerHour => quantity(value, 'mph');
/** Percent from a bare number. */
export const percent = (value: number): Percent => quantity(value, '%');

/** 1 mile is exactly 1.609344 km. */
export const fromKilometresPerHour = (value: number): MilesPerHour => milesPerHour(value / 1.609344);
/** 1 knot is exactly 1.852 km/h. */
export const fromKnots = (value: number): MilesPerHour => fromKilometresPerHour(value * 1.852);
/** 1 m/s is 2.236936 mph. */
export const fromMetresPerSecond = (value: number): MilesPerHour => milesPerHour((value * 3.6) / 1.609344);
/** 1 in is exactly 25.4 mm. */
export const fromMillimetres = (value: number): Inches => inches(value / 25.4);
