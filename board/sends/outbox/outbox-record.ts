import type { Conflict } from '../send.js';

/** A change as the device keeps it. What has once been sent under a key is never altered: the key would be refused. */
export interface OutboxRecord {
  readonly version: 2;
  /** Place in the line, given by the store. */
  readonly seq?: number;
  readonly key: string;
  readonly personId: string;
  /** Name of the change; a later client must still know it. */
  readonly change: string;
  readonly title: string;
  readonly input: Readonly<Record<string, unknown>>;
  /** A picture that goes with it; its bytes lie beside the records, so that reading those stays quick. */
  readonly file?: { readonly type: string } | null;
  readonly state: 'unsent' | 'refused' | 'conflict';
  readonly message: string;
  readonly details: readonly string[];
  readonly conflict: Conflict | null;
  /** How often the service answered that something went wrong on its side. */
  readonly failures: number;
}

/** A picture on its way into an outbox. */
export interface OutboxFile {
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

/** A change as it is given to an outbox. */
export type MadeChange = Pick<OutboxRecord, 'personId' | 'change' | 'title' | 'input'> & {
  readonly file?: OutboxFile | null;
};

/** What may lie in the store: records of this version, of earlier and of later ones. */
export type StoredRecord = {
  readonly seq?: number;
  readonly key: string;
  readonly version?: number;
} & Record<string, unknown>;

/** As the first version kept a change, in a list of its own for each person. */
export interface FirstRecord {
  readonly key: string;
  readonly change: string;
  readonly title: string;
  readonly input: Readonly<Record<string, unknown>>;
}

/** A record of the first version as one of today; key and input stay, so that it still has one effect. */
export function fromFirst({ key, change, title, input }: FirstRecord, personId: string): OutboxRecord {
  return newRecord({ key, personId, change, title, input });
}

/** A record that was just made. */
export function newRecord({ file, ...made }: MadeChange & { readonly key: string }): OutboxRecord {
  return {
    version: 2,
    ...made,
    file: file ? { type: file.type } : null,
    state: 'unsent',
    message: '',
    details: [],
    conflict: null,
    failures: 0,
  };
}

/** A stored record as this version reads it; null for one that only a later version can read, which stays as it is. */
export function readRecord(stored: StoredRecord): OutboxRecord | null {
  return stored.version === 2 ? (stored as unknown as OutboxRecord) : null;
}
