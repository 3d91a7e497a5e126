/** Host part of the service's message ids. */
const hostOf = (origin: string): string => new URL(origin).hostname;

/** Message-ID of a delivery: the same at every attempt, so that a receiver can tell a repeated one. */
export function messageIdOf(deliveryId: string, origin: string): string {
  return `<${deliveryId}@${hostOf(origin)}>`;
}

/** The id under which mail programs gather all messages of one job. */
export function threadOf(jobId: string, origin: string): string {
  return `<job.${jobId}@${hostOf(origin)}>`;
}
