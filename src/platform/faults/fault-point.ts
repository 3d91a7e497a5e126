/** The named points at which the fault suite kills a process, to show that nothing is lost there. */
export const FAULT_POINTS = [
  'before-commit',
  'after-commit',
  'after-relay-queued',
  'after-delivery-claimed',
  'after-provider-answered',
] as const;
export type FaultPoint = (typeof FAULT_POINTS)[number];

/** Kills this very process with no chance to tidy up when the environment names the point; otherwise does nothing. */
export async function faultPoint(point: FaultPoint): Promise<void> {
  if (process.env['FLAGWAY_FAULT_POINT'] !== point) return;
  process.kill(process.pid, 'SIGKILL');
  await new Promise(() => undefined);
}
