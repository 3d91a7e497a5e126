import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Improvement, Prisma } from '../../generated/prisma/client.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import { fingerprint } from '../../platform/change/fingerprint.js';
import { Clock } from '../../platform/clock/clock.js';
import { contextOf } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { log } from '../../platform/log.js';
import { readRows } from '../gather/read-rows.js';
import { computePlan } from '../replan/compute-plan.js';
import { runThread } from '../threads/run-thread.js';
import type { ThreadAnswers } from '../threads/thread-task.js';
import { ImprovementRows } from './improvement-rows.js';
import { readWeights } from './stored-outcome.js';
import { improvableInput } from './improvable-input.js';

/** Searches at once in one process: each takes a whole processor. */
const AT_ONCE = 2;

/** A worker says this often that it is alive, and hears whether it is to stop. */
const BEAT_MILLISECONDS = 500;

type Found = ThreadAnswers['improve']['result'];

/** Does searches for better plans, each in a thread of its own. What it knows about them stands in their rows, so another worker can go on. */
@Injectable()
export class Improver {
  private readonly workerId = randomUUID();
  private readonly atWork = new Map<
    string,
    { readonly done: Promise<void>; handBack: () => Promise<void> }
  >();

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly runner: ChangeRunner,
    private readonly rows: ImprovementRows,
  ) {}

  /** Begins a search if there is room and nobody alive has it; comes back at once. What is not begun is offered again by the sweep. */
  async begin(id: string): Promise<void> {
    if (this.atWork.has(id) || this.atWork.size >= AT_ONCE) return;
    const run = await this.rows.claim(id, this.workerId);
    if (run) this.start(run);
  }

  /** Waits until nothing is at work here. */
  async settled(): Promise<void> {
    await Promise.all([...this.atWork.values()].map(({ done }) => done));
  }

  /** Gives back what is at work, so that another worker begins it anew, and ends the threads. */
  async close(): Promise<void> {
    await Promise.all([...this.atWork.values()].map(({ handBack }) => handBack()));
    await this.settled();
  }

  private start(run: Improvement): void {
    const place = { done: Promise.resolve(), handBack: () => this.rows.handBack(run.id, this.workerId) };
    this.atWork.set(run.id, place);
    place.done = this.search(run, place)
      .catch(async (error: unknown) => {
        log('error', 'A search for a better plan failed', {
          improvement: run.id,
          error: error instanceof Error ? (error.stack ?? error.message) : String(error),
        });
        await this.rows.fail(
          run.id,
          this.workerId,
          'The search failed; the log of the worker says why. Start another.',
        );
      })
      .catch((error: unknown) =>
        log('error', 'A failed search could not be marked', { error: String(error) }),
      )
      .finally(() => this.atWork.delete(run.id));
  }

  private async search(run: Improvement, place: { handBack: () => Promise<void> }): Promise<void> {
    const input = await this.inputOf(run.companyId);
    let said: Parameters<ImprovementRows['beat']>[2] = null;
    const thread = runThread<'improve'>(
      {
        kind: 'improve',
        input,
        seed: run.seed,
        seconds: run.seconds,
        weights: readWeights(run.weights),
      },
      ({ schedules, objective: total, withinPercent }, seconds) =>
        (said = { schedules, progress: { total, withinPercent, seconds } }),
    );
    let lost = false;
    place.handBack = async () => {
      lost = true;
      await thread.end();
      await this.rows.handBack(run.id, this.workerId);
    };
    const beat = async (): Promise<void> => {
      const told = await this.rows.beat(run, this.workerId, said);
      if (told === 'lost') {
        lost = true;
        await thread.end();
      } else if (told !== null) thread.stop();
    };
    const beats = setInterval(
      () =>
        void beat().catch((error: unknown) =>
          log('warn', 'A search could not say how far it is', { error: String(error) }),
        ),
      BEAT_MILLISECONDS,
    );
    try {
      const found = await thread.result;
      await this.finish(run, found, fingerprint(input));
    } catch (error) {
      if (!lost) throw error;
    } finally {
      clearInterval(beats);
    }
  }

  private inputOf(companyId: string) {
    return this.database.$transaction(async (tx) => {
      const now = this.clock.now();
      const rows = await readRows({ tx, ctx: { companyId }, now });
      return improvableInput(computePlan(rows, now.getTime()).planned);
    });
  }

  /** Writes what was found in a change of its own; the plan is made anew in it, and the proposal follows from that. */
  private async finish(run: Improvement, found: Found, inputHash: string): Promise<void> {
    const ctx = contextOf({ companyId: run.companyId, personId: '', role: 'office', name: 'the search' });
    await this.runner.runInternal(ctx, async (change) => {
      const { tx, now } = change;
      const own = { id: run.id, workerId: this.workerId, state: 'running' } as const;
      const [kept] = await tx.improvement.findMany({ where: own });
      if (!kept) return;
      const discard = kept.stop === 'discard';
      const outcome = {
        before: null,
        after: null,
        withinPercent: found.withinPercent,
        proved: found.proved,
        factsMoved: false,
      };
      await tx.improvement.updateMany({
        where: own,
        data: {
          endedAt: now,
          schedules: found.schedules,
          revision: { increment: 1 },
          ...(discard
            ? { state: 'stopped' }
            : {
                state: 'offered',
                order: [...found.order],
                inputHash,
                outcome: outcome satisfies Prisma.InputJsonObject,
              }),
        },
      });
      change.record({
        action: discard ? 'search thrown away' : 'search ended',
        subjectType: 'improvement',
        subjectId: run.id,
        detail: { schedules: found.schedules },
      });
    });
  }
}
