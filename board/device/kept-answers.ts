import { device } from './device-database.js';

/** An answer of the service as it was last seen. */
export interface KeptAnswer<R> {
  readonly data: R;
  /** When it was heard, in milliseconds of this device's clock. */
  readonly heardAt: number;
}

/** Keeps an answer for the time without a signal. A device that keeps nothing is no fault: the page works on. */
export async function keepAnswer(name: string, data: unknown): Promise<void> {
  try {
    await (await device()).put('answers', { data, heardAt: Date.now() }, name);
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}

/** The answer seen last under this name, or null. */
export async function keptAnswer<R>(name: string): Promise<KeptAnswer<R> | null> {
  try {
    return ((await (await device()).get('answers', name)) as KeptAnswer<R> | undefined) ?? null;
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return null;
  }
}

/** Forgets all answers: nobody reads on a device what the one who signed out had seen. */
export async function forgetAnswers(): Promise<void> {
  try {
    await (await device()).clear('answers');
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}
