import { recordDocument } from '../document/record-document.js';
import { drawDocument } from '../pdf/draw-document.js';
import type { RecordFacts } from '../record-facts.js';

/** Makes the file of a record from its facts. Pure but for its fonts: equal facts give equal bytes. */
export function makeRecord(facts: RecordFacts): Promise<Buffer> {
  return drawDocument(recordDocument(facts), facts.pictures, new Date(facts.asOf ?? 0));
}
