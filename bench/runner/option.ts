/** What a benchmark can be told on the command line as `--name value`. */
export interface Option<T> {
  /** How the value is called in the help, e.g. `N` or `DIR`; null for one that is given without a value. */
  readonly takes: string | null;
  /** What it does, in one line. */
  readonly says: string;
  /** Stands in when it is not given; without one the option must be given. */
  readonly fallback?: { readonly value: T };
  /** @throws RangeError that says what it takes */
  read(text: string): T;
}

/** A whole number of at least `least`. */
export function count(says: string, least: number, fallback?: number): Option<number> {
  return {
    takes: 'N',
    says,
    ...(fallback === undefined ? {} : { fallback: { value: fallback } }),
    read(text) {
      const value = Number(text);
      if (text.trim() === '' || !Number.isSafeInteger(value) || value < least) {
        throw new RangeError(`takes a whole number from ${least} up, not "${text}"`);
      }
      return value;
    },
  };
}

/** A number above zero. */
export function amount(says: string, fallback?: number): Option<number> {
  return {
    takes: 'X',
    says,
    ...(fallback === undefined ? {} : { fallback: { value: fallback } }),
    read(text) {
      const value = Number(text);
      if (!(value > 0 && value < Infinity)) throw new RangeError(`takes a number above zero, not "${text}"`);
      return value;
    },
  };
}

/** A folder or a file, which must be given. */
export function path(says: string): Option<string> {
  return { takes: 'PATH', says, read: readPath };
}

/** A folder or a file; null when it is not given. */
export function optionalPath(says: string): Option<string | null> {
  return { takes: 'PATH', says, fallback: { value: null }, read: readPath };
}

/** Something that is done only when asked for. */
export function flag(says: string): Option<boolean> {
  return { takes: null, says, fallback: { value: false }, read: () => true };
}

function readPath(text: string): string {
  if (text === '') throw new RangeError('takes a path');
  return text;
}
