/** Why nothing could be had from another server, in a sentence for people that names the server and no secret. */
export class FetchFailure extends Error {
  /** Status of the answer; null when there was none. */
  readonly status: number | null;
  /** What the answer said; null when there was none. */
  readonly body: string | null;
  /** The server asks not to be called again for so long; null when it did not say. */
  readonly waitMilliseconds: number | null;

  constructor(
    message: string,
    more: {
      readonly status?: number;
      readonly body?: string;
      readonly waitMilliseconds?: number | null;
      readonly cause?: unknown;
    } = {},
  ) {
    super(message, { cause: more.cause });
    this.name = 'FetchFailure';
    this.status = more.status ?? null;
    this.body = more.body ?? null;
    this.waitMilliseconds = more.waitMilliseconds ?? null;
  }
}
