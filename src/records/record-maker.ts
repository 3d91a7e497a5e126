import { Injectable } from '@nestjs/common';
import type { Context } from '../platform/context.js';
import { RecordGatherer } from './gather-record.js';
import type { Audience } from './record-facts.js';
import { runRecord } from './threads/run-record.js';

/** Makes closing records when they are asked for, one at a time; none is kept, so none is ever stale. */
@Injectable()
export class RecordMaker {
  private last: Promise<unknown> = Promise.resolve();

  constructor(private readonly gatherer: RecordGatherer) {}

  /** The PDF of a job's record; null when the company has no job of that number. */
  make(ctx: Context, number: number, audience: Audience): Promise<Buffer | null> {
    const made = this.last.then(async () => {
      const facts = await this.gatherer.gather(ctx, number, audience);
      return facts && runRecord(facts);
    });
    this.last = made.catch(() => undefined);
    return made;
  }
}
