import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock/clock.js';
import type { Context } from '../../platform/context.js';
import { Database } from '../../platform/database/database.js';
import { readRows } from '../gather/read-rows.js';
import type { PlanningRows } from '../gather/rows.js';
import { type ComputedPlan, computePlan } from '../replan/compute-plan.js';

/** A company's plan of this moment with the rows it was made of. */
export interface CompanyPlan extends ComputedPlan {
  readonly rows: PlanningRows;
}

/** Plans a company without writing anything: for questions. */
@Injectable()
export class CompanyPlanner {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** The plan as it is now, from one consistent look at the rows. */
  async plan({ companyId }: Pick<Context, 'companyId'>): Promise<CompanyPlan> {
    const now = this.clock.now();
    const rows = await this.database.$transaction((tx) => readRows({ tx, ctx: { companyId }, now }), {
      isolationLevel: 'RepeatableRead',
    });
    return { ...computePlan(rows, now.getTime()), rows };
  }
}
