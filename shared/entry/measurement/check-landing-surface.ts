import { inside, isSimple, sides, signedArea } from '../geometry/outline.js';
import { distanceToLine } from '../geometry/point.js';
import type { KeepOut, LandingSurface } from '../geometry/site-plan.js';
import { splitAtJoint } from '../geometry/split-at-joint.js';
import type { Fault } from '../read/fault.js';
import type { LandingArea } from './area.js';

/** How far a drawn length may be off the measured one, in. */
const SLACK = 1;

/** Faults of a landing as drawn: its outline against its measures, its keep-outs and joints against its outline. */
export function checkLandingSurface(surface: LandingSurface, area: LandingArea): Fault[] {
  const { outline, joints, keepOuts, sideSetbacks, setback } = surface;
  if (!isSimple(outline) || Math.abs(signedArea(outline)) < 1) {
    const message = 'its sides cross, or it has no surface; name the corners in turn, each once';
    return [{ path: 'outlineInches', message }];
  }
  const extent = (axis: 'x' | 'y') => {
    const all = outline.map((corner) => corner[axis]);
    return Math.max(...all) - Math.min(...all);
  };
  const kept = sides(outline).map(([a, b], i) => ({ a, b, setback: sideSetbacks[i] ?? setback }));
  return [
    ...lengthFault('outlineInches', 'out from the wall (y)', extent('y'), area.length, 'lengthInches'),
    ...lengthFault('outlineInches', 'along the wall (x)', extent('x'), area.width, 'widthInches'),
    ...joints.flatMap((joint, i) =>
      splitAtJoint(kept, joint, 0) === null
        ? [{ path: `joints[${i}]`, message: 'must run straight from one side of the landing to another' }]
        : [],
    ),
    ...keepOuts.flatMap((out, i) =>
      isOn(surface, out) ? [] : [{ path: `keepOuts[${i}]`, message: `"${out.name}" is not on this landing` }],
    ),
  ];
}

/** A fault where a drawn length is not the measured one. */
export function lengthFault(
  path: string,
  what: string,
  drawn: number,
  measured: number,
  name: string,
): Fault[] {
  if (Math.abs(drawn - measured) <= SLACK) return [];
  const shown = Math.round(drawn * 100) / 100;
  return [
    { path, message: `drawn ${shown} in ${what}, but ${name} makes ${measured} in; measure both again` },
  ];
}

function isOn({ outline }: LandingSurface, out: KeepOut): boolean {
  if (out.kind === 'outline') return out.outline.some((corner) => inside(outline, corner));
  const near = sides(outline).some(([a, b]) => distanceToLine(out.centre, a, b) <= out.radius);
  return near || inside(outline, out.centre);
}
