/** What is typed into a form, by the name of the field; a box that is ticked holds `yes`. */
export type Values = Readonly<Record<string, string>>;

/** What is wrong with a form, by the name of the field. */
export type FieldFaults = Readonly<Record<string, string>>;

/** One field of a form. */
export interface FormField {
  readonly name: string;
  readonly label: string;
  readonly unit?: string;
  /** What most sites have: put in to begin with, and shown as such until a person changes it. */
  readonly usual?: string;
  /** May stay empty. */
  readonly optional?: boolean;
  /** A sentence under the field: how to measure it, or whom to ask. */
  readonly hint?: string;
  /** Words rather than a number. */
  readonly text?: boolean;
  /** A count: no fractions. */
  readonly whole?: boolean;
}

/** Whether a box is ticked. */
export const ticked = (values: Values, name: string): boolean => values[name] === 'yes';

/** What stands in the fields of a form before anything is typed. */
export const usualValues = (fields: readonly FormField[]): Values =>
  Object.fromEntries(fields.map(({ name, usual }) => [name, usual ?? '']));
