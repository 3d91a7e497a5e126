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
  /** Both values, where somebody else set the same field. */
  readonly conflict?: Conflict | null;
  /** It waits for the person's word: it was left unsent on an earlier page, and is not work on site. */
  readonly held?: boolean;
}

/**
 * `unsent`: no answer came, it may or may not have arrived. `refused`: the service said no and wrote nothing.
 * `conflict`: somebody else set the same field, a person has to choose.
 */
export type SendState = 'sending' | 'unsent' | 'refused' | 'conflict' | 'done';

/** Both values of a field, and what the service asks for to set the own one over the other. */
export interface Conflict {
  readonly field: string;
  readonly theirs: string;
  readonly mine: string;
  readonly standing: string | null;
  readonly changedBy: string | null;
  readonly currentRevision: number;
}
