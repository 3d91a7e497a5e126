import { InvalidInput } from '../platform/outcomes/invalid-input.js';
import { Refused } from '../platform/outcomes/refusal.js';

/** The value of a JSON text. @throws Refused with InvalidInput that says where the text stops being JSON. */
export function parseJsonText(path: string, text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Refused(
      new InvalidInput([{ path, message: `is not JSON: ${why}. Correct the text and send it again.` }]),
    );
  }
}
