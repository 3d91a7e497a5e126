import type { EquipmentHold, Interval, Link, LinkKind, Phase, Plan, PlanInput } from '../model.js';
import { slot, type Slot } from '../slot.js';

/** A plan seen from its end. */
export interface Mirror {
  /** The latest finish: an instant `t` is seen as `end - t`. */
  readonly end: Slot;
  /** Planning this pushes every phase as far towards its job's finish as links, hours, weather, crews and equipment allow. */
  readonly input: PlanInput;
}

const TURNED: Readonly<Record<LinkKind, LinkKind>> = { FS: 'FS', SS: 'FF', FF: 'SS', SF: 'SF' };

/**
 * Turns what is still to be done round in time, for the backward half of a justification. What is pinned or kept inside the freeze window
 * stays where the plan has it; started work, gates and most lags are left out and working lags count the other end's hours. So its plan
 * need not be one that can be worked: only the order it gives is used.
 */
export function mirroredInput(input: PlanInput, plan: Plan): Mirror {
  const end = slot(plan.phases.reduce((most, { finish }) => Math.max(most, finish ?? 0), 0));
  const turned = ({ from, to }: Interval): Interval[] =>
    from < end ? [{ from: slot(end - Math.min(to, end)), to: slot(end - from) }] : [];
  const planned = new Map(plan.phases.filter(({ state }) => state === 'planned').map((one) => [one.id, one]));
  const finishes = new Map(plan.jobs.map(({ id, finish }) => [id, finish ?? end]));
  const holds = turnedHolds(input, planned);
  const phases = input.phases.flatMap((phase): Phase[] => {
    const place = planned.get(phase.id);
    if (!place) return [];
    const { gates: _gates, facts: _facts, commitment: _promise, previous: _previous, ...rest } = phase;
    const at = slot(end - finishes.get(phase.jobId)!);
    const facts = place.fixedBy === null ? undefined : { pinnedStart: slot(end - place.finish!) };
    const gates = [{ kind: 'notBefore', id: 'job', at, cause: 'end of the job' }] as const;
    return [{ ...rest, gates, facts, holds: holds.get(phase.id) }];
  });
  const order = [...planned.values()].sort((a, b) => b.finish! - a.finish!);
  return {
    end,
    input: {
      ...input,
      horizon: Math.max(1, end),
      now: slot(0),
      freezeUntil: slot(0),
      calendars: input.calendars.map(({ id, open }) => ({ id, open: open.flatMap(turned) })),
      weather: input.weather.map(({ id, holds }) => ({
        id,
        holds: holds
          .filter(({ cause }) => cause.kind !== 'unknown')
          .flatMap((hold) => turned(hold).map((stretch) => ({ ...hold, ...stretch }))),
      })),
      inspections: [],
      jobs: input.jobs.map(({ id }) => ({ id, priority: 0 })),
      phases,
      links: [...input.links, ...linksOfVisits(input)]
        .filter(({ from, to }) => planned.has(from) && planned.has(to))
        .map(({ id, from, to, kind, lag, lagIn }) => ({
          id,
          from: to,
          to: from,
          kind: TURNED[kind],
          lag,
          lagIn,
        })),
      order: order.map(({ id }) => id),
    },
  };
}

/** Equipment that stays out from one phase to another is taken by the other when time runs backward. */
function turnedHolds(input: PlanInput, planned: ReadonlyMap<string, unknown>): Map<string, EquipmentHold[]> {
  const holds = new Map<string, EquipmentHold[]>();
  for (const phase of input.phases) {
    for (const { poolId, quantity, untilPhaseId } of phase.holds ?? []) {
      const away = untilPhaseId !== undefined && planned.has(untilPhaseId) && planned.has(phase.id);
      const taker = away ? untilPhaseId : phase.id;
      const hold = away ? { poolId, quantity, untilPhaseId: phase.id } : { poolId, quantity };
      holds.set(taker, [...(holds.get(taker) ?? []), hold]);
    }
  }
  return holds;
}

/** A visit as the time between the work it looks at and the work that waits for it. */
function linksOfVisits(input: PlanInput): Link[] {
  const visits = new Map(input.inspections.map((visit) => [visit.id, visit]));
  return input.phases.flatMap((phase) =>
    (phase.gates ?? []).flatMap((gate) => {
      const visit = gate.kind === 'inspection' ? visits.get(gate.inspectionId) : undefined;
      if (!visit || visit.state.kind === 'passed') return [];
      const lag = visit.notice + visit.visit;
      return visit.after.map((from): Link => {
        const id = `visit ${JSON.stringify([visit.id, from, phase.id])}`;
        return { id, from, to: phase.id, kind: 'FS', lag, lagIn: 'elapsed' };
      });
    }),
  );
}
