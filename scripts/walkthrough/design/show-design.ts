import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { entryDrawings } from '../../../shared/drawing/entry-drawings.js';
import { designEntry } from '../../../shared/entry/design/design-entry.js';
import { checkMeasurement } from '../../../shared/entry/measurement/check-measurement.js';
import { describeFaults } from '../../../shared/entry/read/fault.js';
import { designWords } from './design-words.js';

/** What was designed: in words, as data, and the files of the drawings. */
export interface ShownDesign {
  readonly words: string;
  readonly files: readonly string[];
  /** The same for a machine; drawings stand in the files. */
  readonly data: unknown;
}

/**
 * Designs the entry of a sheet of measurements and writes its drawings into a folder, a new one among the system's
 * temporary files where none is named.
 *
 * @throws Error that lists every fault of the sheet.
 */
export function showDesign(sheet: unknown, folder?: string): ShownDesign {
  const check = checkMeasurement(sheet);
  if (!check.ok) throw new Error(`The measurements cannot be used:\n${describeFaults(check.faults)}`);
  const designed = designEntry(check.measurement);
  const drawings = entryDrawings(designed);
  const out = folder ?? mkdtempSync(join(tmpdir(), 'flagway-design-'));
  mkdirSync(out, { recursive: true });
  const files = drawings.map(({ key, svg }) => {
    const file = join(out, `${key}.svg`);
    writeFileSync(file, svg);
    return file;
  });
  const listed = drawings.map(({ title, scale }, i) => `  ${title}, 1 : ${scale}: ${files[i]}`);
  const { heat, circuits, risers, footing, buyList, findings } = designed;
  const sets = designed.sets.map(({ setKey, layout, instead }) => ({
    setKey,
    laid: layout?.measure ?? null,
    instead: instead && { feet: instead.length, laid: instead.layout.measure },
  }));
  return {
    words: [designWords(designed), 'Drawings, to scale', ...listed, ''].join('\n'),
    files,
    data: { heat, sets, circuits, risers, footing, buyList, findings, files },
  };
}
