import type { FieldFaults } from './field.js';

/** One fault as the service tells it: where in the input, and what to enter instead. */
export interface Fault {
  readonly path: string;
  readonly message: string;
}

/** The faults of a refusal at the fields they concern, and those that no single field can mend. */
export interface PlacedFaults {
  readonly at: FieldFaults;
  readonly rest: readonly string[];
}

/** Sentences that begin with what is asked of a field, and so need its label before them. */
const OF_THE_FIELD = /^(must|is|has|names)\b/;

/**
 * Puts each fault of a refusal at its field. `paths` says which field stands for which place of the input; a place inside
 * another one, such as `week.0.hours`, is that of the longest that holds it.
 */
export function placeFaults(
  faults: readonly Fault[],
  paths: Readonly<Record<string, string>>,
  labels: Readonly<Record<string, string>>,
): PlacedFaults {
  const at: Record<string, string> = {};
  const rest: string[] = [];
  for (const { path, message } of faults) {
    const name = fieldAt(path.replaceAll('[', '.').replaceAll(']', ''), paths);
    if (name === null) rest.push(sentence(message));
    else at[name] = [at[name], said(message, labels[name])].filter(Boolean).join(' ');
  }
  return { at, rest };
}

function fieldAt(path: string, paths: Readonly<Record<string, string>>): string | null {
  const holds = Object.keys(paths).filter((known) => path === known || path.startsWith(`${known}.`));
  const [longest] = holds.sort((a, b) => b.length - a.length);
  return longest === undefined ? null : (paths[longest] ?? null);
}

const said = (message: string, label: string | undefined): string =>
  sentence(label !== undefined && OF_THE_FIELD.test(message) ? `${label} ${message}` : message);

function sentence(text: string): string {
  const whole = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}
