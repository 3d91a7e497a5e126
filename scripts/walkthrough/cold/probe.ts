import { airAt } from './falling-frost.js';
import type { PlacementView } from './questions.js';

const HALF_HOUR = 1_800_000;

/** What came of a post. */
export interface PostView {
  readonly status: number;
  readonly taken: number;
  readonly known: number;
}

/**
 * An invented logger in the placement: the concrete runs 1.5 °F under what was predicted for it when it was placed. It
 * posts over plain HTTP with nothing but its token.
 */
export class Probe {
  private postedUntil: number;

  constructor(
    private readonly address: string,
    private readonly token: string,
    placedAt: Date,
    private readonly course: PlacementView['outlook']['points'],
    private readonly frostFrom: Date,
  ) {
    this.postedUntil = placedAt.getTime();
  }

  /** Posts every half hour up to now that has not been posted yet. */
  async post(now: Date): Promise<PostView> {
    const readings: object[] = [];
    for (let at = this.postedUntil + HALF_HOUR; at <= now.getTime(); at += HALF_HOUR)
      readings.push({ at: new Date(at).toISOString(), concreteF: this.concreteAt(at), airF: this.air(at) });
    if (readings.length === 0) return { status: 200, taken: 0, known: 0 };
    this.postedUntil += readings.length * HALF_HOUR;
    return this.send(readings);
  }

  /** Sends the last reading once more, as a logger does that missed the answer. */
  async repeat(): Promise<PostView> {
    const at = this.postedUntil;
    return this.send([
      { at: new Date(at).toISOString(), concreteF: this.concreteAt(at), airF: this.air(at) },
    ]);
  }

  private async send(readings: readonly object[]): Promise<PostView> {
    const answer = await fetch(this.address, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${this.token}` },
      body: JSON.stringify({ readings }),
    });
    const { taken, known } = (await answer.json()) as { taken: number; known: number };
    return { status: answer.status, taken, known };
  }

  private air(at: number): number {
    return airAt((at - this.frostFrom.getTime()) / 3_600_000);
  }

  /** Along the predicted course between its points; past its end it nears the air by a tenth each half hour. */
  private concreteAt(at: number): number {
    const later = this.course.findIndex((point) => Date.parse(point.at) >= at);
    const next = this.course[later];
    const before = this.course[later - 1] ?? next;
    if (!next || !before) return this.pastTheEnd(at);
    const from = Date.parse(before.at);
    const share = (at - from) / Math.max(1, Date.parse(next.at) - from);
    return tenth(before.temperatureF + (next.temperatureF - before.temperatureF) * share - 1.5);
  }

  private pastTheEnd(at: number): number {
    const last = this.course.at(-1);
    if (!last) return 50;
    let temperature = last.temperatureF - 1.5;
    for (let then = Date.parse(last.at); then < at; then += HALF_HOUR)
      temperature += (this.air(then) - temperature) * 0.003;
    return tenth(temperature);
  }
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
