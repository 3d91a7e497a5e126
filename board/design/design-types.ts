import type { EntryDesignQuery } from '../api/documents.js';

/** The job with its design as the pages ask for it. */
export type DesignedJob = NonNullable<EntryDesignQuery['jobByNumber']>;

/** Its design. */
export type Design = NonNullable<DesignedJob['design']>;

/** A figure with at most so many decimals, and no trailing zeros. */
export const figure = (value: number, digits = 1): string => String(Number(value.toFixed(digits)));
