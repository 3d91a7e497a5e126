import { Injectable } from '@nestjs/common';
import type { Change } from './change.js';

/** Names of the steps that follow a change inside its transaction, in the order they run. */
export const STEP_ORDER = ['hookupReadiness', 'cureWatch', 'weatherHolds', 'replan', 'reminders'] as const;
export type StepName = (typeof STEP_ORDER)[number];
export type ChangeStep = (change: Change) => Promise<void>;

/**
 * What follows every change before it commits. Features register their step; the platform knows only the order, so no
 * service can forget to re-plan or to move a reminder.
 */
@Injectable()
export class ChangeSteps {
  private readonly steps = new Map<StepName, ChangeStep>();

  /** @throws Error when the step has one already: each name has exactly one owner. */
  register(name: StepName, step: ChangeStep): void {
    if (this.steps.has(name)) throw new Error(`The step "${name}" has an owner already`);
    this.steps.set(name, step);
  }

  /** @throws Error naming every step without an owner; called at boot. */
  demandComplete(): void {
    const missing = STEP_ORDER.filter((name) => !this.steps.has(name));
    if (missing.length > 0) throw new Error(`No feature registered the step(s) ${missing.join(', ')}`);
  }

  async run(change: Change): Promise<void> {
    for (const name of STEP_ORDER) await this.steps.get(name)?.(change);
  }
}
