/** A binary heap of small numbers, least first. */
export class RankQueue {
  private readonly heap: number[] = [];

  push(rank: number): void {
    const { heap } = this;
    let at = heap.push(rank) - 1;
    while (at > 0) {
      const parent = (at - 1) >>> 1;
      if (heap[parent]! <= rank) break;
      heap[at] = heap[parent]!;
      at = parent;
    }
    heap[at] = rank;
  }

  /** Takes the least; undefined when empty. */
  pop(): number | undefined {
    const { heap } = this;
    const least = heap[0];
    const last = heap.pop();
    if (least === undefined || last === undefined || heap.length === 0) return least;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && heap[child + 1]! < heap[child]!) child++;
      if (heap[child]! >= last) break;
      heap[at] = heap[child]!;
      at = child;
    }
    heap[at] = last;
    return least;
  }
}
