import { feet, inches, type Feet, type Inches, type SquareFeet } from './length.js';
import { quantity, type Quantity } from './quantity.js';

/** Power in watts. */
export type Watts = Quantity<'W'>;
/** Potential in volts. */
export type Volts = Quantity<'V'>;
/** Resistance in ohms. */
export type Ohms = Quantity<'Ω'>;
/** Insulation resistance in megohms. Kept apart from ohms: the two readings are six decades apart. */
export type Megaohms = Quantity<'MΩ'>;
/** Current in amperes. */
export type Amperes = Quantity<'A'>;
/** Resistance of one conductor per foot of its length. */
export type OhmsPerFoot = Quantity<'Ω/ft'>;
/** Power of a heating cable per foot of its length. */
export type WattsPerFoot = Quantity<'W/ft'>;
/** Power per heated area. */
export type WattsPerSquareFoot = Quantity<'W/ft²'>;

/** Watts from a bare number. */
export const watts = (value: number): Watts => quantity(value, 'W');
/** Volts from a bare number. */
export const volts = (value: number): Volts => quantity(value, 'V');
/** Ohms from a bare number. */
export const ohms = (value: number): Ohms => quantity(value, 'Ω');
/** Megohms from a bare number. */
export const megaohms = (value: number): Megaohms => quantity(value, 'MΩ');
/** Amperes from a bare number. */
export const amperes = (value: number): Amperes => quantity(value, 'A');
/** Ohms per foot of one conductor from a bare number. */
export const ohmsPerFoot = (value: number): OhmsPerFoot => quantity(value, 'Ω/ft');
/** Watts per foot of cable from a bare number. */
export const wattsPerFoot = (value: number): WattsPerFoot => quantity(value, 'W/ft');
/** Watts per square foot from a bare number. */
export const wattsPerSquareFoot = (value: number): WattsPerSquareFoot => quantity(value, 'W/ft²');

/** Power density from power per square metre: 1 W/m² is 0.09290304 W/ft². */
export const fromWattsPerSquareMetre = (value: number): WattsPerSquareFoot =>
  wattsPerSquareFoot(value * 0.3048 * 0.3048);

/** Power over the area it heats. */
export const powerDensity = (power: Watts, area: SquareFeet): WattsPerSquareFoot =>
  wattsPerSquareFoot(power / area);

/** Spacing of a cable of `perFoot` that gives `density`: 12·w/p. */
export const spacingForDensity = (perFoot: WattsPerFoot, density: WattsPerSquareFoot): Inches =>
  inches((12 * perFoot) / density);

/** Even spacing of `length` of cable over `area`: 12·A/L. */
export const spacingForLength = (area: SquareFeet, length: Feet): Inches => inches((12 * area) / length);

/** Length of cable that covers `area` at an even `spacing`. */
export const lengthForSpacing = (area: SquareFeet, spacing: Inches): Feet => feet((12 * area) / spacing);
