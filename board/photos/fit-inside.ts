/** Width and height in whole pixels so that neither side is longer than `longest`; what is smaller stays as it is. */
export function fitInside(width: number, height: number, longest: number): readonly [number, number] {
  const share = Math.min(1, longest / Math.max(width, height));
  return [Math.max(1, Math.round(width * share)), Math.max(1, Math.round(height * share))];
}
