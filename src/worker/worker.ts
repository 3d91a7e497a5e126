import { Inject, Injectable } from '@nestjs/common';
import { Improver } from '../planning/planning.face.js';
import { CONFIG, type Config } from '../platform/config/config.js';
import { HintBus } from '../platform/hints/hint-bus.js';
import { WorkQueue } from '../platform/queue/work-queue.js';
import { ForecastFetcher } from '../weather/weather.face.js';
import { Consumer } from './consumer.js';
import { Relay } from './relay.js';
import { Sweep } from './sweep.js';
import { Ticker } from './ticker.js';
import { TimeKeeper } from './time-keeper.js';

/** The worker role: relay, consumer, sweep and time keeper. Does nothing before it is started. */
@Injectable()
export class Worker {
  constructor(
    private readonly queue: WorkQueue,
    private readonly relay: Relay,
    private readonly consumer: Consumer,
    private readonly sweep: Sweep,
    private readonly timeKeeper: TimeKeeper,
    private readonly improver: Improver,
    private readonly forecasts: ForecastFetcher,
    private readonly hints: HintBus,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /**
   * Starts working; what an earlier worker left is taken up at once.
   *
   * @returns stops, after the work in hand is done.
   * @throws Error when the queue cannot be used.
   */
  async start(): Promise<() => Promise<void>> {
    await this.queue.open();
    await this.sweep.renew();
    const consumption = await this.queue.consume((entry) => this.consumer.work(entry));
    const relaying = new Ticker('relay', this.config.FLAGWAY_RELAY_MILLISECONDS, () => this.relay.run());
    const sweeping = new Ticker('sweep', this.config.FLAGWAY_SWEEP_MILLISECONDS, () => this.sweep.run());
    const keeping = new Ticker('time keeper', this.config.FLAGWAY_SWEEP_MILLISECONDS, () =>
      this.timeKeeper.run(),
    );
    const deafen = this.hints.onAny(() => relaying.wake());
    relaying.wake();
    sweeping.wake();
    keeping.wake();
    return async () => {
      deafen();
      await Promise.all([relaying.stop(), sweeping.stop(), keeping.stop()]);
      this.forecasts.close();
      await consumption.close();
      await this.improver.close();
    };
  }
}
