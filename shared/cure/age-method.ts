import { fromMemory, published, type Source } from '../entry/source.js';
import { celsius, type Celsius } from '../units/temperature.js';
import { hours, type Hours } from '../units/time.js';
import { CAUTIOUS_METHOD, CAUTIOUS_SOURCE } from './cautious-age.js';
import { arrheniusRate, en1992Rate, equivalentAge, fhpRate, type AgeRate } from './equivalent-age.js';
import type { CureInterval } from './interval.js';
import { CAUTIOUS_DATUM, nurseSaulAge } from './nurse-saul.js';

/** How the age of a mixture is counted; data of the mixture. Left out, it is the cautious pair. */
export type AgeMethodChoice =
  | { readonly kind: 'cautious' }
  | { readonly kind: 'nurse-saul'; readonly datumC: number }
  | { readonly kind: 'arrhenius'; readonly activationK: number }
  | { readonly kind: 'fhp' }
  | { readonly kind: 'en1992' };

/** One form of a method: over a history, and as a speed at one temperature. */
interface AgeForm {
  age(intervals: readonly CureInterval[]): Hours;
  readonly rate: AgeRate;
}

/** A way to count an age; of several forms the one that counts least. */
export interface AgeMethod {
  readonly text: string;
  readonly source: Source;
  readonly forms: readonly AgeForm[];
}

const REFERENCE = celsius(20);
const byRate = (rate: AgeRate): AgeForm => ({
  age: (intervals) => equivalentAge(intervals, rate),
  rate: (temperature) => (temperature < 0 ? 0 : rate(temperature)),
});

/** Nurse–Saul with a datum; frozen concrete gains nothing though the datum lies lower. */
function saul(datum: Celsius): AgeForm {
  return {
    age: (intervals) => nurseSaulAge(intervals.filter(thawed), datum),
    rate: (t) => (t < 0 || t <= datum ? 0 : (t - datum) / (REFERENCE - datum)),
  };
  function thawed({ from, to }: CureInterval): boolean {
    return datum >= 0 || from + to >= 0;
  }
}

/** The method that a choice names. Throws on figures that no mixture has. */
export function ageMethod(choice: AgeMethodChoice = { kind: 'cautious' }): AgeMethod {
  switch (choice.kind) {
    case 'cautious':
      return {
        text: CAUTIOUS_METHOD,
        source: CAUTIOUS_SOURCE,
        forms: [saul(CAUTIOUS_DATUM), byRate(fhpRate)],
      };
    case 'nurse-saul': {
      const { datumC } = choice;
      if (!(datumC >= -20 && datumC <= 10)) throw new RangeError(`Datum ${datumC} °C; give one of -20 to 10`);
      const text = `Nurse–Saul (datum ${datumC} °C), equivalent age at 20 °C`;
      return { text, source: fromMemory('ASTM C1074'), forms: [saul(celsius(datumC))] };
    }
    case 'arrhenius': {
      const { activationK } = choice;
      if (!(activationK >= 2000 && activationK <= 9000)) {
        throw new RangeError(`Activation temperature ${activationK} K; give one of 2000 to 9000`);
      }
      const text = `Arrhenius (activation temperature ${activationK} K), equivalent age at 20 °C`;
      return {
        text,
        source: fromMemory('ASTM C1074'),
        forms: [byRate(arrheniusRate(activationK, REFERENCE))],
      };
    }
    case 'fhp':
      return {
        text: 'Freiesleben Hansen–Pedersen, equivalent age at 20 °C',
        source: fromMemory('Freiesleben Hansen and Pedersen 1977'),
        forms: [byRate(fhpRate)],
      };
    case 'en1992':
      return {
        text: 'EN 1992-1-1 eq. B.10; near freezing it counts for more than others',
        source: published('EN 1992-1-1 eq. B.10'),
        forms: [byRate(en1992Rate)],
      };
  }
}

/** Equivalent age of a history by a method. */
export const ageBy = ({ forms }: AgeMethod, intervals: readonly CureInterval[]): Hours =>
  hours(Math.min(...forms.map((form) => form.age(intervals))));

/** Hours at a steady temperature until a method has counted what is missing; null when it never does. */
export function hoursUntil(
  { forms }: AgeMethod,
  intervals: readonly CureInterval[],
  required: Hours,
  steady: Celsius,
): Hours | null {
  const missing = forms.map((form) => {
    const left = required - form.age(intervals);
    if (left <= 0) return 0;
    const rate = form.rate(steady);
    return rate > 0 ? left / rate : Infinity;
  });
  const longest = Math.max(...missing);
  return Number.isFinite(longest) ? hours(longest) : null;
}
