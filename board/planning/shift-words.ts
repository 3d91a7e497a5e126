/** How much later or earlier something ends, in days and hours of the clock. */
export function shiftWords(minutes: number | null): string {
  if (minutes === null) return 'no end';
  if (minutes === 0) return 'the same';
  const size = Math.abs(minutes);
  const days = Math.floor(size / 1440);
  const hours = Math.round(((size % 1440) / 60) * 4) / 4;
  const span = [days > 0 && `${days} d`, hours > 0 && `${hours} h`].filter(Boolean).join(' ');
  return `${span} ${minutes > 0 ? 'later' : 'earlier'}`;
}
