import type { Fault } from './fault.js';
import { sayValue } from './say-value.js';

/** The limits a number is read with. `hint` may recognise a slip of the pen and say what was meant. */
export interface NumberLimits {
  readonly min?: number;
  readonly max?: number;
  readonly unit?: string;
  readonly whole?: boolean;
  /** How the limits are printed when the plain numbers read badly. */
  readonly range?: string;
  readonly hint?: (value: number) => string | undefined;
}

/**
 * Reads data of unknown shape and collects every fault instead of stopping at the first. Reading goes on with a
 * harmless stand-in, so what was read may be used only when there are no faults.
 */
export class Reader {
  constructor(
    readonly value: unknown,
    readonly path: string,
    readonly faults: Fault[],
  ) {}

  /** Records a fault at this place. */
  fault(message: string): void {
    this.faults.push({ path: this.path, message });
  }

  /** The member `name`, whatever it is. */
  at(name: string): Reader {
    const owner = this.isObject() ? (this.value as Record<string, unknown>) : {};
    const value = Object.prototype.hasOwnProperty.call(owner, name) ? owner[name] : undefined;
    return new Reader(value, this.path === '' ? name : `${this.path}.${name}`, this.faults);
  }

  /** Whether nothing was given. */
  get missing(): boolean {
    return this.value === undefined || this.value === null;
  }

  /** Records a fault unless this is an object with no names but `known`. */
  object(known: readonly string[]): boolean {
    if (!this.isObject()) {
      this.fault(`must be an object, got ${sayValue(this.value)}`);
      return false;
    }
    for (const name of Object.keys(this.value as object)) {
      if (!known.includes(name))
        this.at(name).fault(`unknown name; remove it or use one of: ${known.join(', ')}`);
    }
    return true;
  }

  /** The items of a list. */
  list(atLeast = 0): Reader[] {
    if (!Array.isArray(this.value)) {
      this.fault(`must be a list, got ${sayValue(this.value)}`);
      return [];
    }
    if (this.value.length < atLeast) this.fault(`needs at least ${atLeast}, got ${this.value.length}`);
    return this.value.map((item: unknown, i) => new Reader(item, `${this.path}[${i}]`, this.faults));
  }

  /** A number inside limits; a text that looks like a number is refused, not guessed. */
  number(limits: NumberLimits = {}): number {
    const unit = limits.unit === undefined ? '' : ` ${limits.unit}`;
    if (typeof this.value !== 'number' || !Number.isFinite(this.value)) {
      this.fault(`must be a number${unit === '' ? '' : ` in${unit}`}, got ${sayValue(this.value)}`);
      return limits.min ?? 0;
    }
    const { min = -Infinity, max = Infinity } = limits;
    if (this.value < min || this.value > max) {
      const hint = limits.hint?.(this.value);
      this.fault(
        `must be ${limits.range ?? sayRange(min, max)}${unit}, got ${this.value}${hint ? `; ${hint}` : ''}`,
      );
    } else if (limits.whole === true && !Number.isInteger(this.value)) {
      this.fault(`must be a whole number, got ${this.value}`);
    }
    return this.value;
  }

  /** A number, or `otherwise` when nothing was given. */
  numberOr(otherwise: number, limits: NumberLimits = {}): number {
    return this.missing ? otherwise : this.number(limits);
  }

  /** A text that says something. */
  text(pattern?: { readonly like: RegExp; readonly say: string }): string {
    if (typeof this.value !== 'string' || this.value.trim() === '') {
      this.fault(`must be a text, got ${sayValue(this.value)}`);
      return '';
    }
    if (pattern && !pattern.like.test(this.value)) this.fault(`${pattern.say}, got ${sayValue(this.value)}`);
    return this.value;
  }

  /** Yes or no. */
  flag(): boolean {
    if (typeof this.value !== 'boolean') this.fault(`must be true or false, got ${sayValue(this.value)}`);
    return this.value === true;
  }

  /** One of a few words. */
  oneOf<T extends string>(words: readonly T[]): T {
    const word = words.find((candidate) => candidate === this.value);
    if (word === undefined) this.fault(`must be one of ${words.join(', ')}, got ${sayValue(this.value)}`);
    return word ?? (words[0] as T);
  }

  private isObject(): boolean {
    return typeof this.value === 'object' && this.value !== null && !Array.isArray(this.value);
  }
}

/** Starts reading at the root. */
export const readFrom = (value: unknown): Reader => new Reader(value, '', []);

const sayRange = (min: number, max: number): string => {
  if (max === Infinity) return `at least ${min}`;
  return min === -Infinity ? `at most ${max}` : `${min} to ${max}`;
};
