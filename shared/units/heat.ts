import { wattsPerSquareFoot, type WattsPerSquareFoot } from './electrical.js';
import { quantity, type Quantity } from './quantity.js';

/** Heat through an area as the American handbooks state it, Btu/h·ft². */
export type HeatFlux = Quantity<'Btu/h·ft²'>;
/** Heat through an area and a degree, Btu/h·ft²·°F: what a film or a layer lets through. */
export type Conductance = Quantity<'Btu/h·ft²·°F'>;
/** A rate of fall in inches of water an hour. */
export type InchesPerHour = Quantity<'in/h'>;

/** Btu/h·ft² from a bare number. */
export const heatFlux = (value: number): HeatFlux => quantity(value, 'Btu/h·ft²');
/** Btu/h·ft²·°F from a bare number. */
export const conductance = (value: number): Conductance => quantity(value, 'Btu/h·ft²·°F');
/** in/h from a bare number. */
export const inchesPerHour = (value: number): InchesPerHour => quantity(value, 'in/h');

/** 1 Btu/h is 0.29307107 W. */
const WATTS_PER_BTU_HOUR = 0.29307107;
/** 1 W/(m·K) is 0.57778932 Btu/h·ft·°F. */
const BTU_FOOT_PER_WATT_METRE = 0.57778932;
/** 1 J/(m³·K) is 1.49107e-5 Btu/ft³·°F. */
const BTU_PER_JOULE_VOLUME = 1.491066e-5;

/** 100 Btu/h·ft² are 29.3 W/ft². */
export const toWattsPerSquareFoot = (flux: HeatFlux): WattsPerSquareFoot =>
  wattsPerSquareFoot(flux * WATTS_PER_BTU_HOUR);
/** The inverse of {@link toWattsPerSquareFoot}. */
export const toHeatFlux = (density: WattsPerSquareFoot): HeatFlux => heatFlux(density / WATTS_PER_BTU_HOUR);
/** A conductivity of 1 W/(m·K) lets 0.5778 Btu through a foot, Btu/h·ft·°F. */
export const toBtuPerHourFoot = (wattsPerMetreKelvin: number): number =>
  wattsPerMetreKelvin * BTU_FOOT_PER_WATT_METRE;
/** Heat kept by a cubic foot, Btu/ft³·°F, from J/(m³·K): water's 4.18 MJ are 62.3 Btu. */
export const toBtuPerCubicFoot = (joulesPerCubicMetreKelvin: number): number =>
  joulesPerCubicMetreKelvin * BTU_PER_JOULE_VOLUME;
