/**
 * Solves a tridiagonal system in one sweep down and one up. `diagonal` and `right` are used up; the answer goes to
 * `solution`. Diagonally dominant systems, as conduction gives them, need no pivot.
 */
export function solveTridiagonal(
  lower: Float64Array,
  diagonal: Float64Array,
  upper: Float64Array,
  right: Float64Array,
  solution: Float64Array,
): void {
  const n = diagonal.length;
  for (let i = 1; i < n; i++) {
    const factor = lower[i]! / diagonal[i - 1]!;
    diagonal[i]! -= factor * upper[i - 1]!;
    right[i]! -= factor * right[i - 1]!;
  }
  solution[n - 1] = right[n - 1]! / diagonal[n - 1]!;
  for (let i = n - 2; i >= 0; i--) solution[i] = (right[i]! - upper[i]! * solution[i + 1]!) / diagonal[i]!;
}
