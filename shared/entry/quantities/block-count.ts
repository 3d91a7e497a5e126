import type { SquareFeet } from '../../units/length.js';

/** Blocks of 8 × 8 × 16 in (nominal, joint included) that face one square foot: 144 / (8 × 16). */
export const BLOCKS_PER_SQUARE_FOOT = 1.125;

/**
 * Blocks for a wall face: 100 × 10 ft needs 1125. Rounded up to whole blocks, a hair of float noise forgiven.
 * Source: Navy Builder training manual, estimating concrete masonry.
 */
export const blockCount = (face: SquareFeet): number => Math.ceil(face * BLOCKS_PER_SQUARE_FOOT - 1e-9);
