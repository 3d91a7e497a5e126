import type { Celsius } from '../../units/temperature.js';
import { hours, type Hours } from '../../units/time.js';
import type { AgeMethod } from '../age-method.js';
import type { CureInterval } from '../interval.js';

/** Counts an equivalent age piece by piece, each form of the method by itself; the least of them is the age. */
export class AgeClock {
  private readonly sums: number[];

  constructor(
    private readonly method: AgeMethod,
    from?: AgeClock,
  ) {
    this.sums = from ? [...from.sums] : method.forms.map(() => 0);
  }

  /** Counts a measured interval. */
  addInterval(interval: CureInterval): void {
    this.method.forms.forEach((form, i) => (this.sums[i]! += form.age([interval])));
  }

  /** Counts some hours at one temperature. */
  addSteady(time: number, temperature: Celsius): void {
    for (let i = 0; i < this.sums.length; i++)
      this.sums[i]! += this.method.forms[i]!.rate(temperature) * time;
  }

  get age(): Hours {
    return hours(Math.min(...this.sums));
  }
}

/** The instant between two at which an age is reached, the age growing evenly in between. */
export function crossing(wanted: number, from: number, to: number, start: number, end: number): number {
  return to > from ? start + ((end - start) * Math.max(0, wanted - from)) / (to - from) : end;
}
