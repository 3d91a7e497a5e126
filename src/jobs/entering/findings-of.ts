import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import type { Finding } from '../../../shared/entry/rules/finding.js';
import type { EntryDesigner } from '../../design/design.face.js';

/** What the rules say about a sheet, the laid cable among it; null for a sheet that cannot be read, which is refused later. */
export async function findingsOf(designer: EntryDesigner, sheet: string): Promise<readonly Finding[] | null> {
  const checked = checkMeasurement(parsed(sheet));
  return checked.ok ? (await designer.of(checked.measurement)).findings : null;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    // The change itself says where the text stops being JSON.
    return null;
  }
}
