import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { EntryMeasurement } from '../../shared/entry/measurement/measurement.js';
import { runDesign } from './threads/run-design.js';
import type { ShownDesign } from './threads/shown-design.js';

/** Designs kept at a time: each is some hundred kilobytes, most of it drawings. */
const KEPT = 64;

/**
 * Designs entries, each measurement once: the same measurement is the same design, whoever asks and however often. One thread
 * at a time computes; what is being computed is waited for, not begun again.
 */
@Injectable()
export class EntryDesigner {
  private readonly kept = new Map<string, Promise<ShownDesign>>();
  private last: Promise<unknown> = Promise.resolve();

  /** The design of a checked measurement. @throws Error when the calculation fails; it is tried anew then. */
  of(measurement: EntryMeasurement): Promise<ShownDesign> {
    const key = createHash('sha256').update(JSON.stringify(measurement)).digest('base64');
    const known = this.kept.get(key);
    if (known) return known;
    const design = this.last.then(() => runDesign(measurement));
    this.last = design.catch(() => this.kept.delete(key));
    this.keep(key, design);
    return design;
  }

  private keep(key: string, design: Promise<ShownDesign>): void {
    this.kept.set(key, design);
    const [oldest] = this.kept.keys();
    if (this.kept.size > KEPT && oldest !== undefined) this.kept.delete(oldest);
  }
}
