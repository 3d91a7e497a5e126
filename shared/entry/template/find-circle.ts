/** A link from one name to another. */
interface Step {
  readonly from: string;
  readonly to: string;
}

/** The names of a circle in the order of its links, the first repeated at the end; nothing when there is none. */
export function findCircle(steps: readonly Step[]): string[] | undefined {
  const finished = new Set<string>();
  const walk = (name: string, trail: readonly string[]): string[] | undefined => {
    const seen = trail.indexOf(name);
    if (seen >= 0) return [...trail.slice(seen), name];
    if (finished.has(name)) return undefined;
    for (const step of steps) {
      const circle = step.from === name ? walk(step.to, [...trail, name]) : undefined;
      if (circle) return circle;
    }
    finished.add(name);
    return undefined;
  };
  for (const { from } of steps) {
    const circle = walk(from, []);
    if (circle) return circle;
  }
  return undefined;
}
