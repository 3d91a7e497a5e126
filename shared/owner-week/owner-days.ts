import { type OwnerHold, type OwnerPhase, overlaps, type SiteDay } from './owner-facts.js';
import { OPEN_HOLE, workWords } from './work-words.js';

/** One day as the owner reads it. */
export interface OwnerDay {
  readonly date: string;
  /** What happens. */
  readonly lines: readonly string[];
  /** What to keep clear or leave alone. */
  readonly keepClear: readonly string[];
  /** Why weather keeps people away. */
  readonly weather: readonly string[];
}

/**
 * The days in plain words. The same sentence is said once a day, however many areas it is done on; what only the plan
 * gives is called expected.
 */
export function ownerDays(
  days: readonly SiteDay[],
  phases: readonly OwnerPhase[],
  holds: readonly OwnerHold[],
): OwnerDay[] {
  return days.map((day) => {
    const on = phases.filter(({ stretches }) => stretches.some((one) => overlaps(one, day)));
    const lines = on.map((phase) => {
      const { doing } = workWords(phase.kind);
      return phase.agreed || phase.state !== 'waiting' ? doing : `Expected: ${doing}`;
    });
    return {
      date: day.date,
      lines: distinct(lines),
      keepClear: distinct([
        ...(holeStands(day, phases) ? [OPEN_HOLE] : []),
        ...on.flatMap(({ kind }) => workWords(kind).keepClear ?? []),
      ]),
      weather: distinct(holds.filter((hold) => overlaps(hold, day)).map(weatherWords)),
    };
  });
}

/** Whether the hole is open on a day: dug into by then, and not built in yet. */
function holeStands(day: SiteDay, phases: readonly OwnerPhase[]): boolean {
  const starts = (kind: string) =>
    phases
      .filter((phase) => phase.kind === kind)
      .flatMap(({ stretches }) => stretches.map(({ from }) => from));
  const dug = Math.min(...starts('dig'));
  const built = Math.min(...starts('block'));
  return dug < day.until && built >= day.until;
}

const distinct = (texts: readonly string[]): string[] => [...new Set(texts)];

function weatherWords({ why }: OwnerHold): string {
  return why
    ? `The weather keeps some of the work waiting. ${why}.`
    : 'The weather keeps some of the work waiting; the crew has stopped it.';
}
