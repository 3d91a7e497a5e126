import type { Fahrenheit } from '../../units/temperature.js';
import { HOUR_MS, type EpochMs } from '../../units/time.js';
import type { MilesPerHour } from '../../units/weather-units.js';

/** Air of one hour: the values hold from `at` for an hour. Null is unknown. An hour of a forecast is one. */
export interface AirHour {
  readonly at: EpochMs;
  readonly temperature: Fahrenheit | null;
  readonly wind: MilesPerHour | null;
}

/** Air at an instant. */
export interface AirThen {
  readonly temperature: Fahrenheit;
  readonly wind: MilesPerHour | null;
  /** False where nobody has forecast or measured it and an assumption stands in. */
  readonly known: boolean;
}

/** Air by hour, looked up from front to back. */
export class AirByHour {
  private readonly hours: readonly AirHour[];
  private next = 0;

  /** @param assumed air where none is known; null leaves it unknown */
  constructor(
    hours: readonly AirHour[],
    private readonly assumed: Fahrenheit | null,
  ) {
    this.hours = hours.filter(({ temperature }) => temperature !== null).sort((a, b) => a.at - b.at);
  }

  /** Air at an instant; instants must not go back. Null where it is unknown and nothing is assumed. */
  at(instant: number): AirThen | null {
    while (this.next < this.hours.length && this.hours[this.next]!.at + HOUR_MS <= instant) this.next++;
    const hour = this.hours[this.next];
    if (hour && hour.at <= instant && hour.temperature !== null) {
      return { temperature: hour.temperature, wind: hour.wind, known: true };
    }
    return this.assumed === null ? null : { temperature: this.assumed, wind: null, known: false };
  }
}
