import { Injectable } from '@nestjs/common';
import { MeasuredCourses } from '../cure/cure.face.js';
import { PictureFiles, type PictureOwner } from '../photos/photos.face.js';
import type { Context } from '../platform/context.js';
import { Database } from '../platform/database/database.js';
import { RecordDocument, RecordJournalDocument, type RecordJournalQuery } from './api/documents.js';
import { connectionValues } from './connection-values.js';
import { InsideApi } from './inside-api.js';
import type {
  Audience,
  ConnectionRecord,
  JournalLine,
  RecordFacts,
  RecordJob,
  RecordPicture,
} from './record-facts.js';

/** What loggers post stands in the cure logs; a line of the journal for each post says nothing more. */
const UNTOLD = 'temperatures logged';

/** Gathers the facts of a closing record. */
@Injectable()
export class RecordGatherer {
  constructor(
    private readonly api: InsideApi,
    private readonly database: Database,
    private readonly courses: MeasuredCourses,
    private readonly files: PictureFiles,
  ) {}

  /** The facts of a job of the company; null when it has none of that number. */
  async gather(ctx: Context, number: number, audience: Audience): Promise<RecordFacts | null> {
    const { jobByNumber: job, company } = await this.api.ask(ctx, RecordDocument, { number });
    if (!job) return null;
    return {
      audience,
      company,
      job,
      asOf: await this.asOf(ctx, job.id),
      cures: await this.courses.ofJob(ctx, job.id),
      connections: await this.connections(ctx, job.id),
      pictures: await this.pictures(ctx, job, audience),
      journal: audience === 'company' ? await this.journal(ctx, job.id) : [],
    };
  }

  /** The moment of the newest change of the job. */
  private async asOf({ companyId }: Context, jobId: string): Promise<string | null> {
    const newest = await this.database.journalEntry.findFirst({
      where: { companyId, jobId },
      orderBy: { id: 'desc' },
      select: { at: true },
    });
    return newest?.at.toISOString() ?? null;
  }

  private async connections({ companyId }: Context, jobId: string): Promise<ConnectionRecord[]> {
    const rows = await this.database.hookup.findMany({
      where: { companyId, jobId },
      select: { id: true, record: true },
    });
    return rows.map(({ id, record }) => ({ hookupId: id, values: connectionValues(record) }));
  }

  private async pictures(ctx: Context, job: RecordJob, audience: Audience): Promise<RecordPicture[]> {
    const { companyId } = ctx;
    const released = { jobId: job.id, releasedAt: { not: null } };
    const owner: PictureOwner = audience === 'owner' ? { companyId, only: released } : { companyId };
    const pictures: RecordPicture[] = [];
    for (const { id } of job.photos) {
      const hash = await this.files.hashOf(owner, id);
      if (hash !== null)
        pictures.push({
          photoId: id,
          jpeg: new Uint8Array(await this.files.bytesOf(companyId, hash, 'kept')),
        });
    }
    return pictures;
  }

  private async journal(ctx: Context, jobId: string): Promise<JournalLine[]> {
    const lines: JournalLine[] = [];
    for (let after: string | null = null, more = true; more;) {
      const page: RecordJournalQuery = await this.api.ask(ctx, RecordJournalDocument, { jobId, after });
      const { edges, pageInfo } = page.journal;
      lines.push(...edges.map(({ node }) => node));
      after = pageInfo.endCursor;
      more = pageInfo.hasNextPage;
    }
    return lines.filter(({ action }) => action !== UNTOLD).reverse();
  }
}
