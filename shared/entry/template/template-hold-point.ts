import type { HoldPointItem, ItemLimit } from '../hold-points/item.js';
import type { AreaFilter } from './template.js';
import type { Gate, ReadingStage } from './words.js';

/** A limit that may take its number from the measurement instead of standing in the template. */
export interface TemplateLimit extends ItemLimit {
  readonly atLeastFrom?: 'frostDepth';
}

/** An item whose limit may come from the measurement. */
export interface TemplateItem extends Omit<HoldPointItem, 'limit'> {
  readonly limit: TemplateLimit;
}

interface Common {
  readonly key: string;
  /** Kind of the phase it gates. */
  readonly phase: string;
  readonly gate: Gate;
  readonly title: string;
  readonly items: readonly TemplateItem[];
  readonly caution?: string;
  /** Whether the office may waive it with a reason. Never an inspection, never a reading. */
  readonly waivable: boolean;
  readonly where?: AreaFilter;
  /** Only in the first area that a heating set runs through. */
  readonly firstOfSet?: true;
}

/** A check by the crew. */
export interface TemplateCheck extends Common {
  readonly kind: 'check';
}

/** A visit by the authority having jurisdiction. */
export interface TemplateInspection extends Common {
  readonly kind: 'inspection';
  readonly waivable: false;
}

/** Leave from outside that must be there, and still live. */
export interface TemplateClearanceGate extends Common {
  readonly kind: 'clearance';
  /** Key of the clearance. */
  readonly clearance: string;
}

/** Strength that what was placed must reach. */
export interface TemplateCureGate extends Common {
  readonly kind: 'cure';
  /** Kind of the phase that placed it. */
  readonly placement: string;
  readonly requiredPsi: number;
}

/** A resistance and insulation test of the heating set. */
export interface TemplateReading extends Common {
  readonly kind: 'reading';
  readonly stage: ReadingStage;
  readonly waivable: false;
}

/** A hold point of one kind of phase. */
export type TemplateHoldPoint =
  TemplateCheck | TemplateInspection | TemplateClearanceGate | TemplateCureGate | TemplateReading;
