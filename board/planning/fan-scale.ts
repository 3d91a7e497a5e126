/** Where moments lie on a line from 0 to 1000 that holds them all; one moment alone lies in the middle. */
export function fanScale(moments: readonly number[]): (moment: number) => number {
  const [first, last] = [Math.min(...moments), Math.max(...moments)];
  return (moment) => (last === first ? 500 : Math.round(((moment - first) / (last - first)) * 1000));
}
