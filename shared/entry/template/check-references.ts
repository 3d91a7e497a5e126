import type { Fault } from '../read/fault.js';
import { repeated } from '../read/key.js';
import { findCircle } from './find-circle.js';
import type { EntryTemplate } from './template.js';

/** Faults between the parts of a template: names used twice, names of nothing, and waiting in a circle. */
export function checkReferences(template: EntryTemplate): Fault[] {
  return [
    ...checkTwice(template),
    ...checkNames(template),
    ...checkHoldPoints(template),
    ...checkCircle(template),
  ];
}

function checkTwice({ phases, holdPoints, clearances }: EntryTemplate): Fault[] {
  const twice = (path: string, what: string, keys: string[]): Fault[] =>
    repeated(keys).map((key) => ({ path, message: `${what} "${key}" stands twice; rename one of them` }));
  const points = holdPoints.map((point) => `${point.phase}/${point.key}`);
  return [
    ...twice(
      'phases',
      'kind',
      phases.map((phase) => phase.kind),
    ),
    ...twice(
      'clearances',
      'key',
      clearances.map((clearance) => clearance.key),
    ),
    ...twice('holdPoints', 'hold point', points),
    ...twice(
      'holdPoints',
      'inspection',
      holdPoints.flatMap((point) => (point.kind === 'inspection' ? [point.key] : [])),
    ),
    ...holdPoints.flatMap((point, i) =>
      twice(
        `holdPoints[${i}].items`,
        'item',
        point.items.map((item) => item.id),
      ),
    ),
  ];
}

function checkNames({ phases, links, holdPoints, clearances, equipment }: EntryTemplate): Fault[] {
  const kinds = phases.map((phase) => phase.kind);
  const kind = (path: string, name: string): Fault[] =>
    kinds.includes(name) ? [] : [{ path, message: `there is no phase "${name}"; add it or remove this` }];
  return [
    ...links.flatMap((link, i) => [
      ...kind(`links[${i}].from`, link.from),
      ...kind(`links[${i}].to`, link.to),
    ]),
    ...equipment.flatMap((need, i) => [
      ...kind(`equipment[${i}].from`, need.from),
      ...kind(`equipment[${i}].until`, need.until),
    ]),
    ...holdPoints.flatMap((point, i) => {
      const path = `holdPoints[${i}]`;
      if (point.kind === 'cure')
        return [...kind(`${path}.phase`, point.phase), ...kind(`${path}.placement`, point.placement)];
      if (point.kind !== 'clearance') return kind(`${path}.phase`, point.phase);
      const known = clearances.some((clearance) => clearance.key === point.clearance);
      const message = `there is no clearance "${point.clearance}"; add it or remove this`;
      return [
        ...kind(`${path}.phase`, point.phase),
        ...(known ? [] : [{ path: `${path}.clearance`, message }]),
      ];
    }),
  ];
}

/** A cure gate needs a phase that places something; a reading needs a phase that has a heating set. */
function checkHoldPoints({ phases, holdPoints }: EntryTemplate): Fault[] {
  return holdPoints.flatMap((point, i) => {
    const path = `holdPoints[${i}]`;
    if (point.kind === 'cure') {
      const placing = phases.find((phase) => phase.kind === point.placement);
      if (!placing || placing.placement) return [];
      return [
        { path: `${path}.placement`, message: `"${point.placement}" places nothing; give it a placement` },
      ];
    }
    if (point.kind !== 'reading') return [];
    const gated = phases.find((phase) => phase.kind === point.phase);
    if (gated?.scope !== 'job') return [];
    return [
      {
        path: `${path}.phase`,
        message: `"${point.phase}" belongs to no heating set; gate a phase of an area or set`,
      },
    ];
  });
}

function checkCircle({ links }: EntryTemplate): Fault[] {
  const circle = findCircle(links.filter((link) => link.pairing !== 'nextInSet'));
  if (!circle) return [];
  return [
    {
      path: 'links',
      message: `these wait for each other in a circle: ${circle.join(' → ')}; remove one link`,
    },
  ];
}
