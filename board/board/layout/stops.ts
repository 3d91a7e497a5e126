/** What the keyboard can go to on the drawing, by the id of its element. */
export type StopOf =
  | { readonly kind: 'bar'; readonly phaseId: string }
  | { readonly kind: 'day'; readonly jobId: string; readonly date: string };

/** Id of the bar of a phase. */
export const barStop = (phaseId: string): string => `bar-${phaseId}`;

/** Id of a day of the weather over a job. */
export const dayStop = (jobId: string, date: string): string => `day-${jobId}-${date}`;

const DAY = /^day-(.+)-(\d{4}-\d{2}-\d{2})$/;

/** What an id stands for; null for one that is none of these. */
export function readStop(id: string | null): StopOf | null {
  if (id?.startsWith('bar-')) return { kind: 'bar', phaseId: id.slice(4) };
  const [, jobId, date] = DAY.exec(id ?? '') ?? [];
  return jobId && date ? { kind: 'day', jobId, date } : null;
}
