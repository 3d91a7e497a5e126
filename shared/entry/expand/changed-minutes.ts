import type { EntryMeasurement } from '../measurement/measurement.js';
import type { EntryTemplate } from '../template/template.js';
import { expandPhases } from './expand-phases.js';
import { phaseMinutes } from './phase-minutes.js';

/** A phase whose work follows from quantities, as long as it was and as it is by others, in minutes. */
export interface ChangedMinutes {
  readonly key: string;
  readonly before: number;
  readonly after: number;
}

/** The phases of a template that take longer or shorter by one measurement than by another, in order. */
export function changedMinutes(
  template: EntryTemplate,
  before: EntryMeasurement,
  after: EntryMeasurement,
): ChangedMinutes[] {
  const minutesOf = (measurement: EntryMeasurement) =>
    new Map(
      expandPhases(template, measurement).map(({ key, of, quantities }) => [
        key,
        phaseMinutes(of.duration, quantities) as number,
      ]),
    );
  const earlier = minutesOf(before);
  return [...minutesOf(after)].flatMap(([key, minutes]) => {
    const was = earlier.get(key);
    return was === undefined || was === minutes ? [] : [{ key, before: was, after: minutes }];
  });
}
