import type { ReadingStage } from '../../entry/template/words.js';
import { megaohms, ohms, ohmsPerFoot, volts } from '../../units/electrical.js';
import { feet } from '../../units/length.js';
import { fahrenheit } from '../../units/temperature.js';
import { epochMs, HOUR_MS } from '../../units/time.js';
import type { JudgedReading } from '../accepted-reading.js';
import type { CableReading } from '../cable-reading.js';
import type { HeatingLabel } from '../label.js';

/** An invented label: 19.2 Ω at 68 °F, whose cold lead and temperature do not matter unless a test says so. */
export const labelOf = (more: Partial<HeatingLabel> = {}): HeatingLabel => ({
  ohms: ohms(19.2),
  labelTemperature: fahrenheit(68),
  temperatureCoefficient: 0,
  toleranceLow: -0.05,
  toleranceHigh: 0.1,
  coldLeadLength: feet(25),
  coldLeadOhmsPerFoot: ohmsPerFoot(0),
  minInsulation: megaohms(20),
  insulationTestVolts: volts(500),
  ...more,
});

/** A good reading of that set. */
export const readingOf = (more: Partial<CableReading> = {}): CableReading => ({
  stage: 'laid',
  areaKey: 'landing',
  at: epochMs(0),
  ohms: ohms(19.2),
  megaohms: megaohms(500),
  testVolts: volts(500),
  cableTemperature: fahrenheit(68),
  ...more,
});

/** A judged reading at an hour. */
export const judgedAt = (
  hour: number,
  stage: ReadingStage,
  areaKey: string | null,
  accepted = true,
): JudgedReading => ({ stage, areaKey, at: epochMs(hour * HOUR_MS), accepted });
