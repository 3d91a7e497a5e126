import { SectionRun } from '../../shared/cure/thermal/section-run.js';
import type { Section } from '../../shared/cure/thermal/section.js';
import { DAYS, faceAt } from './section.js';

/** What the core's scheme gave. */
export interface ImplicitResult {
  /** Temperature of the middle cell at each full hour. */
  readonly hourly: readonly number[];
  readonly energyError: number;
}

/** The core's implicit scheme with a step of `seconds`, a whole part of an hour. */
export function implicitRun(section: Section, seconds: number): ImplicitResult {
  const run = new SectionRun(section);
  const hourly: number[] = [];
  const { cells } = section.layers[0]!;
  const steps = (DAYS * 24 * 3600) / seconds;
  for (let step = 0; step < steps; step++) {
    const face = faceAt(((step + 1) * seconds) / 3600);
    run.step(seconds, face, face);
    if (Math.round((step + 1) * seconds) % 3600 === 0) hourly.push(run.temperatures[cells >> 1]!);
  }
  return { hourly, energyError: run.balance().error };
}
