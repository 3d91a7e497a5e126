import { log } from '../platform/log.js';

/**
 * Runs a task again and again with a pause in between, never twice at once, and at once when it is woken. A failure is
 * logged and the next turn comes all the same.
 */
export class Ticker {
  private timer: NodeJS.Timeout | undefined;
  private running: Promise<void> | null = null;
  private wokenMeanwhile = false;
  private stopped = false;

  constructor(
    private readonly name: string,
    private readonly pauseMilliseconds: number,
    private readonly task: () => Promise<unknown>,
  ) {}

  /** Runs the task now, or once more after the turn that is at work. */
  wake(): void {
    if (this.stopped) return;
    if (this.running) {
      this.wokenMeanwhile = true;
      return;
    }
    clearTimeout(this.timer);
    this.running = this.turn().finally(() => {
      this.running = null;
      if (this.stopped) return;
      this.timer = setTimeout(() => this.wake(), this.wokenMeanwhile ? 0 : this.pauseMilliseconds);
      this.wokenMeanwhile = false;
    });
  }

  /** Stops after the turn that is at work. */
  async stop(): Promise<void> {
    this.stopped = true;
    clearTimeout(this.timer);
    await this.running;
  }

  private async turn(): Promise<void> {
    try {
      await this.task();
    } catch (error) {
      log('warn', `The ${this.name} failed and comes again`, {
        error: error instanceof Error ? error.message : String(error),
      });
    }
  }
}
