import type { HoldPointItem } from '../hold-points/item.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import type { DraftHoldPoint, DraftInspection } from '../template/draft.js';
import type { TemplateHoldPoint, TemplateItem } from '../template/template-hold-point.js';
import { anyFits, areaFits } from './area-fits.js';
import { turnOf, type ExpandedPhase } from './expanded-phase.js';

/** The hold points of the phases there are, in the order of the template. */
export function expandHoldPoints(
  points: readonly TemplateHoldPoint[],
  phases: readonly ExpandedPhase[],
  measurement: EntryMeasurement,
): DraftHoldPoint[] {
  return points.flatMap((point) =>
    phases
      .filter((phase) => phase.of.kind === point.phase && applies(point, phase, measurement))
      .map((phase) => draftHoldPoint(point, phase, phases, measurement)),
  );
}

/** The authority's visits that those hold points ask for. */
export const inspectionsOf = (points: readonly DraftHoldPoint[]): DraftInspection[] =>
  points.flatMap((point) =>
    point.inspectionKey === null
      ? []
      : [{ key: point.inspectionKey, phaseKey: point.phaseKey, title: point.title }],
  );

function applies(point: TemplateHoldPoint, phase: ExpandedPhase, measurement: EntryMeasurement): boolean {
  if (point.firstOfSet && turnOf(phase) !== 0) return false;
  return phase.area ? areaFits(phase.area, point.where) : anyFits(measurement.areas, point.where);
}

function draftHoldPoint(
  point: TemplateHoldPoint,
  phase: ExpandedPhase,
  phases: readonly ExpandedPhase[],
  measurement: EntryMeasurement,
): DraftHoldPoint {
  return {
    key: point.key,
    phaseKey: phase.key,
    kind: point.kind,
    gate: point.gate,
    title: point.title,
    items: point.items.map((item) => resolveItem(item, measurement)),
    caution: point.caution ?? null,
    waivable: point.waivable,
    inspectionKey: point.kind === 'inspection' ? inspectionKey(point.key, phase) : null,
    clearanceKey: point.kind === 'clearance' ? point.clearance : null,
    heatingSetKey: point.kind === 'reading' ? (phase.set?.key ?? null) : null,
    readingStage: point.kind === 'reading' ? point.stage : null,
    placementPhaseKey: point.kind === 'cure' ? placementOf(point.placement, phase, phases) : null,
    requiredPsi: point.kind === 'cure' ? point.requiredPsi : null,
  };
}

/** A visit is one per phase it gates: the area or set tells two of a kind apart. */
function inspectionKey(key: string, phase: ExpandedPhase): string {
  const place = phase.area?.key ?? (phase.of.scope === 'set' ? phase.set?.key : undefined);
  return place === undefined ? key : `${key}.${place}`;
}

/** The placement of the same area where there is one, else the job's. */
function placementOf(kind: string, phase: ExpandedPhase, phases: readonly ExpandedPhase[]): string | null {
  const placed = phases.filter((candidate) => candidate.of.kind === kind);
  const same = placed.find((candidate) => phase.area !== null && candidate.area?.key === phase.area.key);
  return (same ?? placed.find((candidate) => candidate.area === null))?.key ?? null;
}

/** Puts the measured number in the place the template left for it; the site's own source stands beside it. */
function resolveItem({ limit, ...item }: TemplateItem, { frost }: EntryMeasurement): HoldPointItem {
  const { atLeastFrom, ...fixed } = limit;
  if (atLeastFrom === undefined) return { ...item, limit: fixed };
  const text = `${item.source.text}: ${frost.depth} in by ${frost.source}`;
  return { ...item, source: { ...item.source, text }, limit: { ...fixed, atLeast: frost.depth } };
}
