import { useEffect, useMemo } from 'react';
import type { PlanInput } from '../../shared/schedule/model.js';
import { Planner } from '../../shared/schedule/planner.js';
import { PlanInputDocument } from '../api/documents.js';
import type { AskError } from '../api/ask.js';
import { useQuery } from '../api/use-query.js';
import type { SlotScale } from './shifts.js';

/** What is planned, with the engine to preview changes of it here. */
export interface PlannedHere {
  readonly scale: SlotScale;
  readonly input: PlanInput;
  /** The engine at the plan in force; it is made when it is first asked for, which takes a moment. */
  readonly planner: () => Planner;
}

/** What a page can preview with; `here` is null until it has been handed out, and where there is too much of it. */
export interface PlannerState {
  readonly here: PlannedHere | null;
  readonly tooMuch: boolean;
  readonly error: AskError | null;
}

/** Asks for what is planned, and again when it changes; nothing is asked until `when` is true. */
export function usePlanner(when: boolean): PlannerState {
  const { data, error } = useQuery(PlanInputDocument, {}, { when });
  const handed = data?.planInput ?? null;
  const { json, startsAt, slotMinutes } = handed ?? {};
  const here = useMemo(
    () => (json && startsAt && slotMinutes ? plannedHere(json, { startsAt, slotMinutes }) : null),
    [json, startsAt, slotMinutes],
  );
  // Made while nobody waits, so that the first move is as quick as the next.
  useEffect(() => {
    if (!here) return;
    const timer = setTimeout(() => here.planner(), 500);
    return () => clearTimeout(timer);
  }, [here]);
  return { here, tooMuch: handed !== null && handed.json === null, error };
}

function plannedHere(json: string, scale: SlotScale): PlannedHere {
  const input = JSON.parse(json) as PlanInput;
  let made: Planner | null = null;
  return { scale, input, planner: () => (made ??= Planner.of(input)) };
}
