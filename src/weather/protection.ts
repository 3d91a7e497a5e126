/** Equipment a phase takes, with the kind of its pool. */
interface TakenEquipment {
  readonly pool: { readonly kind: string };
}

/** Kinds of protection that stand over a phase while it runs: what it takes from the company's equipment. */
export function protectionOf(holds: readonly TakenEquipment[]): string[] {
  return [...new Set(holds.map(({ pool }) => pool.kind))].sort();
}
