/** The longest wait that is believed: a day. */
const LONGEST_MILLISECONDS = 24 * 60 * 60_000;

/** A date of HTTP, as `Wed, 21 Oct 2015 07:28:00 GMT`. */
const HTTP_DATE = /^[A-Z][a-z]{2}, \d{2} [A-Z][a-z]{2} \d{4} \d{2}:\d{2}:\d{2} GMT$/;

/**
 * Milliseconds that a `Retry-After` header asks to wait, a number of seconds or a date (RFC 9110, section 10.2.3), at
 * most a day; null when there is none or it is neither. A date that has passed is no wait.
 */
export function retryAfter(header: string | null, now: Date): number | null {
  const text = header?.trim() ?? '';
  const asked = /^\d{1,12}$/.test(text)
    ? Number(text) * 1000
    : HTTP_DATE.test(text)
      ? Date.parse(text) - now.getTime()
      : NaN;
  return Number.isNaN(asked) ? null : Math.min(Math.max(asked, 0), LONGEST_MILLISECONDS);
}
