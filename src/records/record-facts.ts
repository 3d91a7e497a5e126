import type { MeasuredCourse } from '../cure/cure.face.js';
import type { RecordJournalQuery, RecordQuery } from './api/documents.js';

/** Who a record is made for: everything for the company, what concerns them for the owners of the house. */
export const AUDIENCES = ['owner', 'company'] as const;
export type Audience = (typeof AUDIENCES)[number];

export type RecordJob = NonNullable<RecordQuery['jobByNumber']>;
export type RecordFinding = RecordJob['findings'][number];
export type JournalLine = RecordJournalQuery['journal']['edges'][number]['node'];

/** What an electrician recorded of a connection. */
export interface ConnectionRecord {
  readonly hookupId: string;
  readonly values: readonly (readonly [name: string, value: string])[];
}

/** The picture of a photo. */
export interface RecordPicture {
  readonly photoId: string;
  readonly jpeg: Uint8Array;
}

/** Everything a closing record is made from: plain data, so that equal facts give an equal file. */
export interface RecordFacts {
  readonly audience: Audience;
  readonly company: { readonly name: string; readonly zone: string };
  readonly job: RecordJob;
  /** When the job changed last; it stands as the moment of the file. */
  readonly asOf: string | null;
  readonly cures: readonly MeasuredCourse[];
  readonly connections: readonly ConnectionRecord[];
  readonly pictures: readonly RecordPicture[];
  /** Oldest first; empty for the owner of the house. */
  readonly journal: readonly JournalLine[];
}
