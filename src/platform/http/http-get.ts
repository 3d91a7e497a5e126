import ky, { HTTPError, type Options, TimeoutError } from 'ky';
import type { Chance } from '../chance/chance.js';
import type { Clock } from '../clock/clock.js';
import { BodyTooLong, boundedText } from './bounded-text.js';
import { FetchFailure } from './fetch-failure.js';
import { follow, WrongWay } from './follow.js';
import { retryAfter } from './retry-after.js';

/** Tries of one request, the first one included. */
const TRIES = 3;
/** A wait that a server asks for is waited out up to this; a longer one ends the request. */
const PATIENCE_MILLISECONDS = 5000;
const LONGEST_PAUSE_MILLISECONDS = 10_000;
const LONGEST_BODY = 4 * 1024 * 1024;

/** How other servers are asked. */
export interface HttpSettings {
  /** Who we say we are. */
  readonly agent: string;
  /** The most one try may take, its body included. */
  readonly tryMilliseconds: number;
  /** The most all tries and the pauses between them may take. */
  readonly allMilliseconds: number;
  /** The longest first pause; it doubles, and chance picks from nothing up to it. */
  readonly pauseMilliseconds: number;
}

/** What a server gave to tell one state of an answer from another (RFC 9110, section 8.8). */
export interface Validators {
  readonly etag: string | null;
  readonly lastModified: string | null;
}

/** What a server answered. */
export type HttpAnswer =
  | { readonly kind: 'changed'; readonly text: string; readonly validators: Validators }
  | { readonly kind: 'unchanged' };

/** Reads from other servers: bounded in time and size, tried again where that can help, and only when something changed. */
export class HttpGet {
  private readonly end = new AbortController();

  constructor(
    private readonly settings: HttpSettings,
    private readonly chance: Chance,
    private readonly clock: Clock,
  ) {}

  /** @throws FetchFailure saying why nothing could be had. */
  async get(url: URL, accept: string, known: Validators | null = null): Promise<HttpAnswer> {
    const time = AbortSignal.timeout(this.settings.allMilliseconds);
    const all = AbortSignal.any([time, this.end.signal]);
    try {
      const response = await ky.get(url, this.options(accept, known, all));
      if (response.status === 304) return { kind: 'unchanged' };
      const { headers } = response;
      const validators = { etag: headers.get('etag'), lastModified: headers.get('last-modified') };
      return { kind: 'changed', text: await response.text(), validators };
    } catch (error) {
      throw await this.failureOf(error, url.host, time.aborted);
    }
  }

  /** Breaks off what is being read, and reads nothing any more. */
  close(): void {
    this.end.abort();
  }

  private options(accept: string, known: Validators | null, signal: AbortSignal): Options {
    const { agent, tryMilliseconds, pauseMilliseconds } = this.settings;
    return {
      signal,
      redirect: 'manual',
      timeout: tryMilliseconds,
      headers: {
        accept,
        'user-agent': agent,
        ...(known?.etag ? { 'if-none-match': known.etag } : {}),
        ...(known?.lastModified ? { 'if-modified-since': known.lastModified } : {}),
      },
      // The body is read within the try, so that a slow or broken one is tried again as well.
      fetch: async (request) => {
        const response = await follow(request as Request);
        const text = await boundedText(response, LONGEST_BODY);
        const { status, headers } = response;
        return new Response(status === 304 || status === 204 ? null : text, { status, headers });
      },
      throwHttpErrors: (status) => status !== 304,
      retry: {
        limit: TRIES - 1,
        methods: ['get'],
        statusCodes: [408, 429, 500, 502, 503, 504],
        afterStatusCodes: [429, 503],
        retryOnTimeout: true,
        shouldRetry: ({ error }) => this.mayHelp(error, signal),
        delay: (attempt) => pauseMilliseconds * 2 ** (attempt - 1),
        jitter: (pause) => this.chance.next() * pause,
        backoffLimit: LONGEST_PAUSE_MILLISECONDS,
      },
    };
  }

  /** Undefined leaves it to the status; false ends it. */
  private mayHelp(error: Error, all: AbortSignal): false | undefined {
    const end =
      all.aborted ||
      error instanceof BodyTooLong ||
      error instanceof WrongWay ||
      (this.waitOf(error) ?? 0) > PATIENCE_MILLISECONDS;
    return end ? false : undefined;
  }

  private waitOf(error: unknown): number | null {
    if (!(error instanceof HTTPError)) return null;
    return retryAfter(error.response.headers.get('retry-after'), this.clock.now());
  }

  private async failureOf(error: unknown, host: string, outOfTime: boolean): Promise<FetchFailure> {
    const { tryMilliseconds, allMilliseconds } = this.settings;
    if (error instanceof HTTPError) {
      const { status } = error.response;
      const body = await error.response.text();
      const message = `${host} answered ${status}${statusWords(status)}.`;
      return new FetchFailure(message, { status, body, waitMilliseconds: this.waitOf(error), cause: error });
    }
    if (outOfTime || error instanceof TimeoutError) {
      const limit = outOfTime ? `${allMilliseconds / 1000} s in all` : `${tryMilliseconds / 1000} s`;
      return new FetchFailure(`${host} did not answer within ${limit}.`, { cause: error });
    }
    if (error instanceof BodyTooLong) {
      const most = LONGEST_BODY / 1024 / 1024;
      return new FetchFailure(`${host} answered with more than ${most} MB; it was not read.`, {
        cause: error,
      });
    }
    if (error instanceof WrongWay)
      return new FetchFailure(`${host} cannot be used: ${error.message}. Check its address.`, {
        cause: error,
      });
    return new FetchFailure(`${host} could not be reached, or broke off its answer (${causeOf(error)}).`, {
      cause: error,
    });
  }
}

function statusWords(status: number): string {
  if (status === 429) return ' (asked too often)';
  return status >= 500 ? ' (its own fault)' : '';
}

/** The code of the deepest cause, such as ECONNREFUSED; never its text, which may hold an address with a key. */
function causeOf(error: unknown): string {
  let code = 'no reason given';
  for (let one = error, depth = 0; typeof one === 'object' && one !== null && depth < 6; depth += 1) {
    const { code: named, cause } = one as { code?: unknown; cause?: unknown };
    if (typeof named === 'string') code = named;
    one = cause;
  }
  return code;
}
