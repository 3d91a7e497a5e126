import type { Fault } from '../read/fault.js';
import { readFrom } from '../read/reader.js';
import { checkReferences } from './check-references.js';
import { readClearance, readEquipment, readLink } from './read-template-parts.js';
import { readHoldPoint } from './read-hold-point.js';
import { readPhase } from './read-phase.js';
import type { EntryTemplate } from './template.js';

/** A checked template, or everything that is wrong with it. */
export type TemplateCheck =
  | { readonly ok: true; readonly template: EntryTemplate }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads a template as a company edits it: shape, limits, and that every name it refers to exists, that no inspection
 * or reading can be waived, and that nothing waits for itself. Gives every fault with its place.
 */
export function checkTemplate(value: unknown): TemplateCheck {
  const root = readFrom(value);
  const known = ['version', 'name', 'phases', 'links', 'holdPoints', 'clearances', 'equipment'];
  if (!root.object(known)) return { ok: false, faults: root.faults };
  if (root.at('version').value !== 1) root.at('version').fault('must be 1; this is the only form known');
  const template: EntryTemplate = {
    version: 1,
    name: root.at('name').text(),
    phases: root.at('phases').list(1).map(readPhase),
    links: root.at('links').list().map(readLink),
    holdPoints: root.at('holdPoints').list().map(readHoldPoint),
    clearances: root.at('clearances').list().map(readClearance),
    equipment: root.at('equipment').list().map(readEquipment),
  };
  if (root.faults.length === 0) root.faults.push(...checkReferences(template));
  return root.faults.length === 0 ? { ok: true, template } : { ok: false, faults: root.faults };
}
