/** Something wrong in data that came from outside: where, and what to do about it. */
export interface Fault {
  /** Path into the data, as in `areas[1].riserInches`; empty for the whole. */
  readonly path: string;
  /** What is wrong and what to do. */
  readonly message: string;
}

/** Faults as one text, a line each. */
export const describeFaults = (faults: readonly Fault[]): string =>
  faults.map((fault) => (fault.path === '' ? fault.message : `${fault.path}: ${fault.message}`)).join('\n');
