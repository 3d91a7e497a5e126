import { z } from 'zod';
import { clientKey } from '../platform/graphql/client-key.js';

const between = (least: number, most: number, unit: string) => {
  const error = `must be ${least} to ${most}${unit && ` ${unit}`}; read it again`;
  return z.number().min(least, { error }).max(most, { error });
};

/** How far the resistance of a label may be from volts squared over watts. Common practice, no source. */
const LABEL_SLACK = 0.1;

/** Schema of a label as delivered. */
export const receiveSchema = z
  .object({
    clientKey,
    name: z.string().trim().min(1).max(200).nullish(),
    watts: between(50, 20_000, 'W'),
    volts: between(100, 600, 'V'),
    ohms: between(0.5, 2000, 'Ω'),
    labelTempF: between(32, 120, '°F').nullish(),
    heatedFeet: between(5, 2000, 'ft'),
    coldLeadFeet: between(1, 200, 'ft'),
    coldLeadOhmsPerFoot: between(0, 0.02, 'Ω/ft').nullish(),
    tempCoefficient: between(0, 0.007, 'per kelvin').nullish(),
    toleranceLow: between(-0.2, 0, '').nullish(),
    toleranceHigh: between(0, 0.2, '').nullish(),
    minMegaohms: between(1, 10_000, 'MΩ').nullish(),
    insulationVolts: between(100, 2500, 'V').nullish(),
    minBendInches: between(0.25, 6, 'in').nullish(),
    cureDays: between(1, 90, 'days').int().nullish(),
    receivedAt: z.date().nullish(),
  })
  .superRefine(({ watts, volts, ohms }, check) => {
    const expected = volts ** 2 / watts;
    if (Math.abs(ohms / expected - 1) <= LABEL_SLACK) return;
    const message = `${watts} W at ${volts} V makes ${expected.toFixed(2)} Ω, the label says ${ohms} Ω; read the label again`;
    check.addIssue({ code: 'custom', path: ['ohms'], message });
  });

/** Schema of a reading. */
export const readingSchema = z.object({
  clientKey,
  at: z.date().nullish(),
  ohms: between(0, 1_000_000, 'Ω'),
  megaohms: between(0, 1_000_000, 'MΩ'),
  testVolts: between(1, 10_000, 'V'),
  cableTempF: between(-60, 200, '°F'),
});
