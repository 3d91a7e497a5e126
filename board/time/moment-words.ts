const formatters = new Map<string, Intl.DateTimeFormat>();

/** The parts of a moment on the wall clock of a zone. Formatters are slow to make, so each is made once. */
function wallParts(moment: number, zone: string): Readonly<Record<string, string>> {
  let formatter = formatters.get(zone);
  if (!formatter) {
    formatter = new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      weekday: 'short',
      day: 'numeric',
      month: 'short',
      year: 'numeric',
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
    });
    formatters.set(zone, formatter);
  }
  return Object.fromEntries(formatter.formatToParts(moment).map(({ type, value }) => [type, value]));
}

/** "Mon 6 Jan", as the reasons of the plan write it. */
export function dayWords(moment: number, zone: string): string {
  const { weekday, day, month } = wallParts(moment, zone);
  return `${weekday} ${day} ${month}`;
}

/** "07:30". */
export function timeWords(moment: number, zone: string): string {
  const { hour, minute } = wallParts(moment, zone);
  return `${hour}:${minute}`;
}

/** "Mon 6 Jan 07:30". */
export function momentWords(moment: number, zone: string): string {
  return `${dayWords(moment, zone)} ${timeWords(moment, zone)}`;
}

/** "Mon 6 Jan 2031": for moments far away. */
export function dateWords(moment: number, zone: string): string {
  return `${dayWords(moment, zone)} ${wallParts(moment, zone)['year']}`;
}

/** "Jan 2031". */
export function monthWords(moment: number, zone: string): string {
  const { month, year } = wallParts(moment, zone);
  return `${month} ${year}`;
}

/** "Mon 6 Jan 07:30 to 15:00", naming the second day only where it differs. */
export function stretchWords(from: number, to: number, zone: string): string {
  const sameDay = dateWords(from, zone) === dateWords(to, zone);
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
