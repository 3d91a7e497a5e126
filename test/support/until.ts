/**
 * Waits until something holds, looking again every 20 ms.
 *
 * @throws Error naming what did not come to hold within the time.
 */
export async function until(
  what: string,
  holds: () => Promise<boolean> | boolean,
  milliseconds = 20_000,
): Promise<void> {
  const end = performance.now() + milliseconds;
  while (!(await holds())) {
    if (performance.now() > end) throw new Error(`Did not come to hold within ${milliseconds} ms: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
