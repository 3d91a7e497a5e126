const formatters = new Map<string, Intl.DateTimeFormat>();

/** Formatters are slow to make and quick to use, so each is made once. */
function formatter(zone: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = JSON.stringify([zone, options]);
  let found = formatters.get(key);
  if (!found) formatters.set(key, (found = new Intl.DateTimeFormat('en-US', { timeZone: zone, ...options })));
  return found;
}

/** "Mon, Jan 6". */
export function dayWords(moment: number, zone: string): string {
  return formatter(zone, { weekday: 'short', month: 'short', day: 'numeric' }).format(moment);
}

/** "7:30 AM". */
export function timeWords(moment: number, zone: string): string {
  return formatter(zone, { hour: 'numeric', minute: '2-digit' }).format(moment);
}

/** "Mon, Jan 6, 7:30 AM". */
export function momentWords(moment: number, zone: string): string {
  return `${dayWords(moment, zone)}, ${timeWords(moment, zone)}`;
}

/** "Mon, Jan 6, 2031": for moments far away. */
export function dateWords(moment: number, zone: string): string {
  return formatter(zone, { weekday: 'short', month: 'short', day: 'numeric', year: 'numeric' }).format(
    moment,
  );
}

/** "January 2031". */
export function monthWords(moment: number, zone: string): string {
  return formatter(zone, { month: 'long', year: 'numeric' }).format(moment);
}

/** "Mon, Jan 6, 7:30 AM to 3 PM", naming the second day only where it differs. */
export function stretchWords(from: number, to: number, zone: string): string {
  const sameDay = dayWords(from, zone) === dayWords(to, zone);
  return `${momentWords(from, zone)} to ${sameDay ? timeWords(to, zone) : momentWords(to, zone)}`;
}

/** A moment of the API, which may be missing, in words. */
export function isoWords(iso: string | null | undefined, zone: string, missing = 'not known'): string {
  return iso ? momentWords(Date.parse(iso), zone) : missing;
}

/** "6 h 30 min"; long stretches in days of 24 hours. */
export function durationWords(minutes: number): string {
  const days = Math.floor(minutes / 1440);
  const hours = Math.floor((minutes % 1440) / 60);
  const rest = Math.round(minutes % 60);
  const parts = [days && `${days} d`, hours && `${hours} h`, rest && `${rest} min`].filter(Boolean);
  return parts.length > 0 ? parts.slice(0, 2).join(' ') : 'nothing';
}
