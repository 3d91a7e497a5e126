import { quantity, type Quantity } from './quantity.js';

/** Stress or strength in pounds per square inch. */
export type Psi = Quantity<'psi'>;
/** Stress or strength in megapascals. */
export type Megapascals = Quantity<'MPa'>;

const MPA_PER_PSI = 0.006894757293168;

/** psi from a bare number. */
export const psi = (value: number): Psi => quantity(value, 'psi');
/** MPa from a bare number. */
export const megapascals = (value: number): Megapascals => quantity(value, 'MPa');
/** 500 psi is 3.447 MPa. */
export const toMegapascals = (stress: Psi): Megapascals => megapascals(stress * MPA_PER_PSI);
/** 3.447 MPa is 500 psi. */
export const toPsi = (stress: Megapascals): Psi => psi(stress / MPA_PER_PSI);
