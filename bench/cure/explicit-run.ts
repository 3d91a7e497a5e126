import { degreeOfHydration } from '../../shared/cure/hydration/hydration.js';
import { heatPerVolume } from '../../shared/cure/hydration/hydration-heat.js';
import { cutIntoCells } from '../../shared/cure/thermal/section-cells.js';
import type { Section } from '../../shared/cure/thermal/section.js';
import { celsius } from '../../shared/units/temperature.js';
import { DAYS, faceAt } from './section.js';

/**
 * The plain explicit scheme: forward Euler on the same cells. It is stable only below a step, the shortest cell's;
 * returns the temperatures at each full hour of the middle cell.
 */
export function explicitRun(section: Section, seconds: number): number[] {
  const { count, capacity, between, halfTop, halfBottom, volume, start, heats } = cutIntoCells(section);
  const now = Float64Array.from(start);
  const flow = new Float64Array(count + 1);
  const ages = new Float64Array(count);
  const degrees = new Float64Array(count);
  const hourly: number[] = [];
  const steps = (DAYS * 24 * 3600) / seconds;
  for (let step = 0; step < steps; step++) {
    const face = faceAt((step * seconds) / 3600);
    flow[0] = (face.temperature - now[0]!) / (face.resistance + halfTop);
    for (let i = 1; i < count; i++) flow[i] = between[i - 1]! * (now[i - 1]! - now[i]!);
    flow[count] = (now[count - 1]! - face.temperature) / (face.resistance + halfBottom);
    for (let i = 0; i < count; i++) {
      const heat = heats[i]!;
      ages[i]! += now[i]! < 0 ? 0 : (heat.rate(celsius(now[i]!)) * seconds) / 3600;
      const degree = degreeOfHydration(heat.hydration, ages[i]!);
      const added = (degree - degrees[i]!) * heatPerVolume(heat) * volume[i]!;
      degrees[i] = degree;
      now[i]! += ((flow[i]! - flow[i + 1]!) * seconds + added) / capacity[i]!;
    }
    if (Math.round((step + 1) * seconds) % 3600 === 0) hourly.push(now[count >> 1]!);
  }
  return hourly;
}

/** The longest step that is a whole part of an hour at which the explicit scheme is stable, s. */
export function longestStableStep(section: Section): number {
  const { count, capacity, between, halfTop } = cutIntoCells(section);
  const face = 1 / (faceAt(0).resistance + halfTop);
  let limit = Infinity;
  for (let i = 0; i < count; i++) {
    const above = i === 0 ? face : between[i - 1]!;
    const under = i === count - 1 ? face : between[i]!;
    limit = Math.min(limit, capacity[i]! / (above + under));
  }
  return 3600 / Math.ceil(3600 / limit);
}
