import { fromMemory, type Source } from '../../entry/source.js';

/** The thermal model in words, for every place where a predicted temperature is shown. */
export const THERMAL_METHOD =
  'conduction through the section with heat of hydration, film, blankets, enclosure and ground; corners colder';

/** Where the model and its figures come from. */
export const THERMAL_SOURCE: Source = fromMemory(
  'finite volumes after Patankar 1980; handbook figures for materials, film and heat of cement',
);
