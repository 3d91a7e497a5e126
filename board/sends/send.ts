import type { ChangeName } from './change-documents.js';

/** A change on its way to the service, kept until a person has seen its outcome. */
export interface Send {
  /** The client key: repeated with every try, so that the change has one effect however often it is sent. */
  readonly key: string;
  readonly change: ChangeName;
  /** What the person asked for, in a few words. */
  readonly title: string;
  readonly input: Readonly<Record<string, unknown>>;
  readonly state: SendState;
  /** What came of it; empty while it is under way. */
  readonly message: string;
  /** What is missing or was found, line by line. */
  readonly details: readonly string[];
}

/** `unsent`: no answer came, it may or may not have arrived. `refused`: the service said no and wrote nothing. */
export type SendState = 'sending' | 'unsent' | 'refused' | 'done';
