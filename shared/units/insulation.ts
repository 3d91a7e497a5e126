import { quantity, type Quantity } from './quantity.js';

/** Thermal resistance of a layer as the American trade states it, h·ft²·°F/Btu. */
export type RValue = Quantity<'h·ft²·°F/Btu'>;
/** Thermal resistance of a layer, m²·K/W. */
export type SquareMetreKelvinPerWatt = Quantity<'m²·K/W'>;

/** h·ft²·°F/Btu from a bare number. */
export const rValue = (value: number): RValue => quantity(value, 'h·ft²·°F/Btu');
/** m²·K/W from a bare number. */
export const squareMetreKelvinPerWatt = (value: number): SquareMetreKelvinPerWatt =>
  quantity(value, 'm²·K/W');
/** R 1 is 0.17611 m²·K/W. */
export const toSquareMetreKelvinPerWatt = (r: RValue): SquareMetreKelvinPerWatt =>
  squareMetreKelvinPerWatt(r * 0.176110184);
