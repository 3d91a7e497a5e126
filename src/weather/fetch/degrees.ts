/** Degrees with at most so many decimals and no zeros at the end, as the address of a place is written. */
export const shortDegrees = (degrees: number, decimals: number): string => {
  const text = degrees.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
};
