/** A number with its unit, at most three decimals and no trailing zeros. */
export const say = (value: number, unit: string): string => {
  const number = String(Math.round(value * 1000) / 1000);
  return unit === '' ? number : `${number} ${unit}`;
};
