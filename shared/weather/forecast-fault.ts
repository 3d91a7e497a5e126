/** Something wrong in a forecast file: the line (of the CSV) or the row (of the JSON), counted from 1. */
export interface ForecastFault {
  /** 0 when the fault is of the whole file. */
  readonly line: number;
  readonly message: string;
}

/** What became of a forecast file. Notes say what was marked unknown although the file was taken. */
export type ForecastRead<F> =
  | { readonly ok: true; readonly forecast: F; readonly notes: readonly ForecastFault[] }
  | { readonly ok: false; readonly faults: readonly ForecastFault[] };
