import type { JobPageQuery, JobRecordsQuery } from '../api/documents.js';

/** The job as its page asks for it. */
export type JobOfPage = NonNullable<JobPageQuery['jobByNumber']>;

/** What was measured at the job. */
export type JobRecords = NonNullable<JobRecordsQuery['jobByNumber']>;
