import type { Phase, PlanInput } from './model.js';

/** The input breaks a promise its maker made: it names things that are not there. Lists every fault. */
export class PlanInputError extends Error {
  override readonly name = 'PlanInputError';

  constructor(readonly faults: readonly string[]) {
    super(`The planning input cannot be used: ${faults.join('; ')}. Mend the records it was made from.`);
  }
}

/**
 * Checks ids and amounts before anything is planned.
 * @throws PlanInputError listing every fault
 */
export function checkInput(input: PlanInput): void {
  const faults: string[] = [];
  const known = (what: string, list: readonly { readonly id: string }[]): Set<string> => {
    const ids = new Set<string>();
    for (const { id } of list) {
      if (ids.has(id)) faults.push(`${what} "${id}" is given twice`);
      ids.add(id);
    }
    return ids;
  };
  const calendars = known('calendar', input.calendars);
  const crews = known('crew', input.crews);
  const pools = known('pool', input.pools);
  const weather = known('weather set', input.weather);
  const inspections = known('inspection', input.inspections);
  const jobs = known('job', input.jobs);
  const phases = known('phase', input.phases);
  known('link', input.links);
  const need = (ids: Set<string>, what: string, id: string | undefined, where: string): void => {
    if (id !== undefined && !ids.has(id)) faults.push(`${where} names ${what} "${id}", which is not given`);
  };

  if (!Number.isSafeInteger(input.horizon) || input.horizon <= 0) {
    faults.push('the horizon is not a positive number of slots');
  }
  for (const crew of input.crews) need(calendars, 'calendar', crew.calendarId, `crew "${crew.id}"`);
  for (const inspection of input.inspections) {
    const where = `inspection "${inspection.id}"`;
    need(calendars, 'calendar', inspection.calendarId, where);
    need(jobs, 'job', inspection.jobId, where);
    const { validFor } = inspection;
    if (validFor !== undefined && !isWhole(validFor)) {
      faults.push(`${where} has a time of validity that is not a whole number of slots`);
    }
    if (!isWhole(inspection.notice)) faults.push(`${where} has a notice that is not a whole number of slots`);
    if (!isWhole(inspection.visit)) faults.push(`${where} has a length that is not a whole number of slots`);
    for (const id of inspection.after) need(phases, 'phase', id, where);
  }
  for (const link of input.links) {
    need(phases, 'phase', link.from, `link "${link.id}"`);
    need(phases, 'phase', link.to, `link "${link.id}"`);
    if (!Number.isSafeInteger(link.lag)) faults.push(`link "${link.id}" has a lag that is not whole slots`);
    const { mostLag } = link;
    if (mostLag !== undefined && !Number.isSafeInteger(mostLag)) {
      faults.push(`link "${link.id}" has a greatest lag that is not whole slots`);
    }
  }
  for (const phase of input.phases) {
    const where = `phase "${phase.id}"`;
    need(jobs, 'job', phase.jobId, where);
    need(calendars, 'calendar', phase.calendarId, where);
    need(crews, 'crew', phase.crewId, where);
    need(crews, 'crew', phase.facts?.crewId, where);
    for (const id of phase.weatherIds ?? []) need(weather, 'weather set', id, where);
    for (const hold of phase.holds ?? []) {
      need(pools, 'pool', hold.poolId, where);
      need(phases, 'phase', hold.untilPhaseId, where);
      if (!(hold.quantity > 0)) faults.push(`${where} holds a quantity that is not above zero`);
    }
    for (const gate of phase.gates ?? []) {
      if (gate.kind === 'inspection') need(inspections, 'inspection', gate.inspectionId, where);
    }
    faults.push(...durationFaults(phase).map((fault) => `${where} ${fault}`));
  }
  if (faults.length > 0) throw new PlanInputError(faults);
}

/**
 * Checks one phase for what needs nothing else of the input.
 * @throws PlanInputError listing every fault
 */
export function checkPhase(phase: Phase): void {
  const faults = durationFaults(phase).map((fault) => `phase "${phase.id}" ${fault}`);
  if (faults.length > 0) throw new PlanInputError(faults);
}

function durationFaults({ duration, facts }: Phase): string[] {
  const faults: string[] = [];
  if (!isWhole(duration.slots)) faults.push('has a duration that is not a whole number of slots');
  if (facts?.remaining !== undefined && !isWhole(facts.remaining)) {
    faults.push('has remaining work that is not a whole number of slots');
  }
  const { actualStart, actualFinish } = facts ?? {};
  if (actualFinish !== undefined && (actualStart === undefined || actualStart > actualFinish)) {
    faults.push('has finished without having started before');
  }
  return faults;
}

function isWhole(count: number): boolean {
  return Number.isSafeInteger(count) && count >= 0;
}
