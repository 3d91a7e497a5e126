import { fahrenheit } from '../../units/temperature.js';

/** Temperature of the film of meltwater on a surface that is kept clear, °F. Source: ASHRAE, snow melting; from memory. */
export const FILM_TEMPERATURE = fahrenheit(33);
/** Temperature at which snow melts, °F. */
export const MELTING_TEMPERATURE = fahrenheit(32);
