import type { EntryMeasurement } from '../measurement/measurement.js';
import { CONCRETE_WASTE } from '../quantities/area-quantities.js';
import { jobQuantities } from '../quantities/job-quantities.js';
import type { BuyKey } from './buy-item.js';
import { flatStone, treadStock } from './tread-stock.js';
import { veneerParts } from './veneer-parts.js';

/** Sealed around a sleeve, both faces of the wall, ft. Common practice, no source. */
const SEALED_AT_SLEEVE = 2;

/** Whole pieces, a hair of float noise forgiven. */
const whole = (pieces: number): number => Math.ceil(pieces - 1e-6);

/**
 * How much of everything an entry takes, without waste. A screw holds each square foot of mesh and a tie each foot of cable;
 * blankets lie on the footing and on every top that is laid wet.
 */
export function buyAmounts(measurement: EntryMeasurement): Record<BuyKey, number> {
  const job = jobQuantities(measurement);
  const { areas, footing } = measurement;
  const sum = (of: (area: (typeof areas)[number]) => number) =>
    areas.reduce((total, area) => total + of(area), 0);
  const againstHouse = sum((area) => (area.kind === 'landing' ? area.width / 12 : 0));
  const sealed = againstHouse + job.sleeves * SEALED_AT_SLEEVE;
  const footingTop = footing ? (footing.length * footing.width) / 12 : 0;
  return {
    'footing-concrete': job.footingCubicYards / (1 + CONCRETE_WASTE),
    'base-concrete': job.baseCubicYards / (1 + CONCRETE_WASTE),
    block: job.blocks,
    grout: job.groutCubicYards,
    cement: job.mortarSacks,
    sand: job.sandCubicFeet,
    mesh: job.meshSquareFeet,
    screws: whole(job.meshSquareFeet),
    'cable-ties': whole(job.cableFeet),
    stone: sum(flatStone),
    'tread-stock': sum(treadStock),
    'veneer-flats': sum((area) => veneerParts(area).flats),
    'veneer-corners': sum((area) => veneerParts(area).corners),
    sealant: sealed,
    'backer-rod': sealed,
    blankets: job.topSquareFeet + footingTop,
    sleeves: job.sleeves,
    'heating-sets': job.heatingSets,
  };
}
