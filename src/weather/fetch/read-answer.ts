import type { ForecastRead } from '../../../shared/weather/forecast-fault.js';
import type { Forecast } from '../../../shared/weather/forecast.js';
import { readProblem } from '../../../shared/weather/sources/read-problem.js';
import { FetchFailure } from '../../platform/http/fetch-failure.js';

/** Faults of an answer that a failure tells; the rest is counted. */
const FAULTS_TOLD = 3;

/** @throws FetchFailure when the text is no JSON. */
export function readJson(text: string, host: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    throw new FetchFailure(`The answer of ${host} is no JSON; it may be cut short.`);
  }
}

/** @throws FetchFailure with the faults when an answer is none that can be used; nothing of it is. */
export function usable(read: ForecastRead<Forecast>, host: string): ForecastRead<Forecast> & { ok: true } {
  if (read.ok) return read;
  const told = read.faults.slice(0, FAULTS_TOLD).map(({ line, message }) => {
    return line === 0 ? message : `hour ${line}: ${message}`;
  });
  const more = read.faults.length - told.length;
  throw new FetchFailure(
    `The answer of ${host} cannot be used: ${told.join('; ')}${more > 0 ? `; and ${more} more faults` : ''}.`,
  );
}

/** A failure with what the server itself said about it. */
export function withProblem(failure: FetchFailure): FetchFailure {
  let said: string | null = null;
  try {
    said = readProblem(JSON.parse(failure.body ?? ''));
  } catch {
    // A body that is no JSON says nothing to people.
  }
  if (said === null) return failure;
  const { status, body, waitMilliseconds, cause } = failure;
  return new FetchFailure(`${failure.message} It says: ${said}`, {
    ...(status === null ? {} : { status }),
    ...(body === null ? {} : { body }),
    waitMilliseconds,
    cause,
  });
}
