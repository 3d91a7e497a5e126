import type { Bench } from './bench.js';
import type { Option } from './option.js';

/** What to run, with what, and how to print it. */
export interface Command {
  readonly bench: Bench;
  readonly given: Readonly<Record<string, unknown>>;
  readonly json: boolean;
}

/** The words of the command line cannot be followed; the message says what can. */
export class CommandError extends Error {
  override readonly name = 'CommandError';
}

/**
 * Reads `<name> [--option value] [--json]`.
 * @throws CommandError naming what is known, for a name or an option that is not, a value that cannot be read or one that is missing
 */
export function readCommand(words: readonly string[], benches: readonly Bench[]): Command {
  const [name, ...rest] = words;
  const bench = benches.find((one) => one.name === name);
  if (!bench) {
    const fault = name === undefined ? 'Say which benchmark to run.' : `There is no benchmark "${name}".`;
    const list = benches.map((one) => `  ${one.name.padEnd(14)} ${one.says}`);
    throw new CommandError([fault, 'Known are:', ...list].join('\n'));
  }
  const given: Record<string, unknown> = {};
  let json = false;
  const waiting = [...rest];
  for (let said = waiting.shift(); said !== undefined; said = waiting.shift()) {
    const [word, joined] = splitWord(said);
    if (word === '--json' && joined === undefined) {
      json = true;
      continue;
    }
    const option = word.startsWith('--') ? bench.options[word.slice(2)] : undefined;
    if (!option) throw refused(bench, `"${said}" is not known`);
    if (word.slice(2) in given) throw refused(bench, `${word} is given twice`);
    given[word.slice(2)] = valueOf(
      bench,
      word,
      option,
      joined ?? (option.takes === null ? '' : waiting.shift()),
    );
  }
  for (const [key, option] of Object.entries(bench.options)) {
    if (key in given) continue;
    if (!option.fallback) throw refused(bench, `--${key} is missing`);
    given[key] = option.fallback.value;
  }
  return { bench, given, json };
}

/** `--jobs=20` is `--jobs 20`. */
function splitWord(word: string): [string, string | undefined] {
  const at = word.startsWith('--') ? word.indexOf('=') : -1;
  return at < 0 ? [word, undefined] : [word.slice(0, at), word.slice(at + 1)];
}

function valueOf(bench: Bench, word: string, option: Option<unknown>, text: string | undefined): unknown {
  if (text === undefined) throw refused(bench, `${word} has no value`);
  try {
    return option.read(text);
  } catch (error) {
    if (error instanceof RangeError) throw refused(bench, `${word} ${error.message}`);
    throw error;
  }
}

function refused(bench: Bench, fault: string): CommandError {
  const lines = Object.entries(bench.options).map(([key, { takes, says, fallback }]) => {
    const word = takes === null ? `--${key}` : `--${key} ${takes}`;
    const standard =
      takes !== null && fallback && fallback.value !== null ? ` (${JSON.stringify(fallback.value)})` : '';
    return `  ${word.padEnd(20)} ${says}${standard}${fallback ? '' : '; must be given'}`;
  });
  const head = `The benchmark ${bench.name} cannot be run so: ${fault}. It takes:`;
  return new CommandError([head, ...lines, `  ${'--json'.padEnd(20)} print one line of JSON`].join('\n'));
}
