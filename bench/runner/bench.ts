import type { Option } from './option.js';

/** The options of a benchmark by their names. */
export type Options = Readonly<Record<string, Option<unknown>>>;

/** What was given for each of them. */
export type Given<O extends Options> = { readonly [K in keyof O]: O[K] extends Option<infer T> ? T : never };

/** What a benchmark found. */
export interface Found {
  /** Printed as one line of JSON with `--json`. */
  readonly figures: Readonly<Record<string, unknown>>;
  /** Printed without it. */
  readonly text: string;
  /** False when something is not only slow but wrong; the command then ends with 1. */
  readonly ok: boolean;
}

/** One benchmark as the runner sees it. */
export interface Bench {
  readonly name: string;
  /** What it measures, in one line. */
  readonly says: string;
  readonly options: Options;
  run(given: Readonly<Record<string, unknown>>, progress: (line: string) => void): Found | Promise<Found>;
}

/**
 * Makes a benchmark whose `run` gets the values of its own options.
 * `progress` writes a line to the error output, so that the figures stay alone on the other.
 */
export function bench<O extends Options>(definition: {
  readonly name: string;
  readonly says: string;
  readonly options: O;
  run(given: Given<O>, progress: (line: string) => void): Found | Promise<Found>;
}): Bench {
  return { ...definition, run: (given, progress) => definition.run(given as Given<O>, progress) };
}
