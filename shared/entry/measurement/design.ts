import type { Supply } from '../../heating/circuit/circuit-plan.js';
import type { DesignWeather } from '../../heating/demand/design-weather.js';
import type { FreeAreaClass } from '../../heating/demand/free-area.js';
import type { Inches } from '../../units/length.js';

/** Heights at the door, and what is planned at the open sides. */
export interface EntryHeights {
  /** Top of the sill above the finished walk. */
  readonly sill: Inches;
  /** How far the finished landing is to lie under the sill. */
  readonly doorDrop: Inches;
  readonly doorSwingsOver: boolean;
  readonly handrailPlanned: boolean;
  readonly guardPlanned: boolean;
}

/** What an entry is designed for; each part may be left out, and then nothing is said about it. */
export interface EntryDesign {
  readonly weather: DesignWeather | null;
  readonly freeAreaClass: FreeAreaClass;
  readonly supply: Supply | null;
  readonly heights: EntryHeights | null;
}
