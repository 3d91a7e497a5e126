import { quantity, type Quantity } from './quantity.js';

/** A length in inches. */
export type Inches = Quantity<'in'>;
/** A length in feet. */
export type Feet = Quantity<'ft'>;
/** An area in square feet. */
export type SquareFeet = Quantity<'ft²'>;
/** A volume in cubic feet. */
export type CubicFeet = Quantity<'ft³'>;
/** A volume in cubic yards, as concrete is ordered. */
export type CubicYards = Quantity<'yd³'>;

/** Inches from a bare number. */
export const inches = (value: number): Inches => quantity(value, 'in');
/** Feet from a bare number. */
export const feet = (value: number): Feet => quantity(value, 'ft');
/** Square feet from a bare number. */
export const squareFeet = (value: number): SquareFeet => quantity(value, 'ft²');
/** Cubic feet from a bare number. */
export const cubicFeet = (value: number): CubicFeet => quantity(value, 'ft³');
/** Cubic yards from a bare number. */
export const cubicYards = (value: number): CubicYards => quantity(value, 'yd³');

/** 12 in to the foot. */
export const toFeet = (length: Inches): Feet => feet(length / 12);
/** 12 in to the foot. */
export const toInches = (length: Feet): Inches => inches(length * 12);
/** The area of a rectangle measured in feet. */
export const rectangle = (length: Feet, width: Feet): SquareFeet => squareFeet(length * width);
/** The volume of a layer: its area times its thickness. */
export const layer = (area: SquareFeet, thickness: Inches): CubicFeet => cubicFeet((area * thickness) / 12);
/** 27 ft³ to the cubic yard. */
export const toCubicYards = (volume: CubicFeet): CubicYards => cubicYards(volume / 27);
