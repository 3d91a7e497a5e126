import type { Change } from '../change.js';
import type { Crew, PlanInput, WeatherHold } from '../model.js';
import type { Slot, SlotCount } from '../slot.js';

/** A phase takes so many slots longer. */
export function delay(phaseId: string, slots: SlotCount): Change[] {
  return [{ kind: 'delay', phaseId, slots }];
}

/**
 * One more crew like one there is, with its trades and hours.
 * @throws RangeError when there is no such crew
 */
export function extraCrew(input: PlanInput, like: string): Change[] {
  const model = input.crews.find(({ id }) => id === like);
  if (!model) throw new RangeError(`There is no crew "${like}" to take as a model: name one of the input.`);
  const taken = new Set(input.crews.map(({ id }) => id));
  let number = 2;
  while (taken.has(`${like} ${number}`)) number++;
  const crew: Crew = { ...model, id: `${like} ${number}` };
  return [{ kind: 'crew', crew }];
}

/** Nobody works from one instant to another: in one calendar, or anywhere. */
export function lostDay(from: Slot, to: Slot, calendarId?: string): Change[] {
  return [{ kind: 'closed', from, to, ...(calendarId === undefined ? {} : { calendarId }) }];
}

/**
 * A phase goes without protection: it no longer takes the equipment, and the weather that the protection kept off it holds it up.
 *
 * @param unprotectedHolds what the bare limits close for it
 * @throws RangeError when there is no such phase
 */
export function droppedProtection(
  input: PlanInput,
  phaseId: string,
  poolIds: readonly string[],
  unprotectedHolds: readonly WeatherHold[],
): Change[] {
  const phase = input.phases.find(({ id }) => id === phaseId);
  if (!phase)
    throw new RangeError(`There is no phase "${phaseId}" to leave unprotected: name one of the input.`);
  const set = { id: `without protection: ${phaseId}`, holds: unprotectedHolds };
  return [
    { kind: 'weather', set },
    {
      kind: 'phase',
      phase: {
        ...phase,
        holds: (phase.holds ?? []).filter(({ poolId }) => !poolIds.includes(poolId)),
        weatherIds: [...(phase.weatherIds ?? []), set.id],
      },
    },
  ];
}
