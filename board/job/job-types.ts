import type { JobDesignQuery, JobPageQuery, JobRecordsQuery } from '../api/documents.js';

/** The job as its page asks for it. */
export type JobOfPage = NonNullable<JobPageQuery['jobByNumber']>;

/** What was measured at the job. */
export type JobRecords = NonNullable<JobRecordsQuery['jobByNumber']>;

/** What the rules say about the job as measured, and what to buy. */
export type JobDesign = NonNullable<JobDesignQuery['jobByNumber']>;

/** What one rule says about the design, and who goes on against it. */
export type DesignFinding = JobDesign['findings'][number];
